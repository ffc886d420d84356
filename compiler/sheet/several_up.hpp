// Several of a piece on one sheet, side by side and head to foot, cut apart after printing.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

#include <string_view>
#include <vector>

namespace bodkin {

// The edition with papers of no size: its sheets come out as large as its folding needs.
Edition without_sheets(const Edition &edition);

// Turns each sheet of an edition, called by a name, into the paper's own, with so many of it on it:
// in columns and rows round the middle, the paper upright or across, whichever wastes less. A page
// keeps its first place; its slack is the least that any of them has. Problem: does-not-go-up.
void lay_several_up(std::string_view name, const Known<int> &up, const Edition &edition,
                    Imposition &imposition, Problems &problems);

// One way of laying a piece on a sheet of its paper: so many in all, and how far the outer ones
// stay from the sheet's edges.
struct WayUp {
  int up = 1, columns = 1, rows = 1;
  Length margin;
};
// Each number that goes, with its best way; none where its paper has no size or its pages do not
// fold.
std::vector<WayUp> ways_up(const Edition &book, std::size_t piece, const Sources &sources);

} // namespace bodkin
