#include "edition/piece.hpp"

namespace bodkin {

std::string_view name_of(PieceEdge edge) {
  switch (edge) {
  case PieceEdge::outer:
    return "outer";
  case PieceEdge::head:
    return "head";
  case PieceEdge::foot:
    return "foot";
  case PieceEdge::inner:
    break;
  }
  return "inner";
}

std::vector<const Piece *> wraps_of(const Edition &book) {
  std::vector<const Piece *> wraps;
  for (const auto &piece : book.pieces)
    if (piece->is_wrap())
      wraps.push_back(piece.get());
  return wraps;
}

} // namespace bodkin
