// What an insert says of its place in the copy. Problem: not-for-this-piece.
#pragma once

#include "edition/piece.hpp"
#include "edition/reader.hpp"

namespace bodkin {

// Told in pages of the book, so before the piece itself is read. `wraps` are the names of those
// that the copy has, from the book outwards.
void take_place(Reader &reader, FactLine line, const std::vector<std::string> &wraps, Piece &piece);

} // namespace bodkin
