// Several of a piece on one sheet, side by side and head to foot, cut apart after printing.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

// The edition with papers of no size: its sheets come out as large as its folding needs.
Edition without_sheets(const Edition &edition);

// Turns each sheet of the piece into the paper's own, with as many of it as the piece asks: in
// columns and rows round the middle, the paper upright or across, whichever wastes less. A page
// keeps its first place; its slack is the least that any of them has. Problem: does-not-go-up.
void lay_several_up(const Piece &piece, Imposition &imposition, Problems &problems);

} // namespace bodkin
