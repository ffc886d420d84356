// What can be wrong with the pieces of a copy as objects: too large, out of reach, in the way of
// the knife.
#pragma once

#include "problems/problem.hpp"
#include "sheet/parts.hpp"

namespace bodkin {

// Problems: piece-too-large, sticks-out, knife-through-fold, out-of-reach.
void check_pieces(const std::vector<CopyPart> &parts, Problems &problems);

// out-of-reach alone: nobody who leafs through the book gets to where the piece goes.
void check_reach(const CopyPart &book, const Piece &piece, Problems &problems);

} // namespace bodkin
