// Several of a piece on one sheet, side by side and head to foot, cut apart after printing.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace bodkin {

// The edition with papers of no size: its sheets come out as large as its folding needs.
Edition without_sheets(const Edition &edition);

// Turns each sheet of an edition, called by a name, into the paper's own, with so many of it on it:
// in columns and rows round the middle, the paper upright or across, whichever wastes less. A page
// keeps its first place; its slack is the least that any of them has. Problem: does-not-go-up.
void lay_several_up(std::string_view name, const Known<std::int64_t> &up, const Edition &edition,
                    Imposition &imposition, Problems &problems);

// The edition's paper, its cover's, and whatever pages ask for.
std::vector<StockId> papers_asked(const Edition &edition);

// The largest number that goes on a paper's sheet in even rows, as far as anybody cuts them apart.
std::int64_t most_on(const Size &paper, const Size &cell);

// One way of laying the book or a piece on sheets of its papers: so many in all, and how far the
// outer ones stay from the sheet's edges.
struct WayUp {
  int up = 1, columns = 1, rows = 1; // on the first kind of sheet
  Length margin;                     // the least
};
// Each number that goes, rising, with its best way, of the book or of a piece by its index; none
// where a paper has no size or the pages do not fold.
std::vector<WayUp> ways_up(const Edition &book, std::optional<std::size_t> piece,
                           const Sources &sources);

} // namespace bodkin
