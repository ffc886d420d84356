// Several of a piece on one sheet, side by side and head to foot, cut apart after printing.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

#include <string_view>

namespace bodkin {

// The edition with papers of no size: its sheets come out as large as its folding needs.
Edition without_sheets(const Edition &edition);

// Turns each sheet of an edition, called by a name, into the paper's own, with so many of it on it:
// in columns and rows round the middle, the paper upright or across, whichever wastes less. A page
// keeps its first place; its slack is the least that any of them has. Problem: does-not-go-up.
void lay_several_up(std::string_view name, const Known<std::int64_t> &up, const Edition &edition,
                    Imposition &imposition, Problems &problems);

} // namespace bodkin
