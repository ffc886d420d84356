// A belly band: how long it is, where its folds lie, and boards, whose size the copy gives as well.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

// Twice the trimmed copy's width, twice the thickness of what it goes round, and what is glued.
Size band_size(const Piece &band, const Size &copy, Length thickness);
// The trimmed copy, and the squares that stand out at head, foot and fore-edge.
Size board_size(const Piece &boards, const Size &copy);

// Of a band imposed as a flat page: its panels, the folds between them, and the overlap, which lies
// hidden under the back but for a strip that keeps the seam shut to the eye.
void make_band(const Piece &band, const Size &copy, Length thickness, Imposition &imposition);

Problem band_too_long(const Piece &band, const Size &paper, const Size &size);

} // namespace bodkin
