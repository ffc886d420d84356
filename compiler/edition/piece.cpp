#include "edition/piece.hpp"

#include <algorithm>

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

bool is_own_matter(const Piece &piece, const Element &element) {
  const bool by_hand = std::holds_alternative<Hand>(element.what);
  return !piece.is_other_book() || (element.work.only && !by_hand);
}

bool has_other_books(const Edition &edition) {
  return std::any_of(edition.pieces.begin(), edition.pieces.end(),
                     [](const auto &piece) { return piece->is_other_book(); });
}

std::vector<const Piece *> wraps_of(const Edition &book, std::optional<std::uint32_t> run) {
  std::vector<const Piece *> wraps;
  for (const auto &piece : book.pieces)
    if (piece->is_wrap() && (!run || !piece->only || **piece->only == *run))
      wraps.push_back(piece.get());
  return wraps;
}

bool lie_together(const Piece &one, const Piece &other) {
  return !one.only || !other.only || **one.only == **other.only;
}

} // namespace bodkin
