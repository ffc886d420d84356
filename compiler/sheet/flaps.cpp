#include "sheet/flaps.hpp"

namespace bodkin {
namespace {

Length Edges::*edge_on(PieceEdge edge, bool right_page) {
  switch (edge) {
  case PieceEdge::head:
    return &Edges::top;
  case PieceEdge::foot:
    return &Edges::bottom;
  case PieceEdge::inner:
    return right_page ? &Edges::left : &Edges::right;
  case PieceEdge::outer:
    break;
  }
  return right_page ? &Edges::right : &Edges::left;
}

Edges widths_of(const Flaps &flaps, bool right_page) {
  Edges edges{flaps.width, flaps.width, flaps.width, flaps.width};
  edges.*edge_on(flaps.open, right_page) = Length{};
  return edges;
}

void fold_along(Sheet &sheet, Spot start, Spot end) {
  Sheet::FoldLine fold;
  fold.start = start;
  fold.end = end;
  fold.valley = false; // flaps go under, away from who looks at the printed side
  sheet.folds.push_back(fold);
}

void fold_flaps(Sheet &sheet, const Edges &flaps, const Box &face) {
  if (flaps.left > Length{})
    fold_along(sheet, {face.x, face.y}, {face.x, face.foot()});
  if (flaps.right > Length{})
    fold_along(sheet, {face.right(), face.y}, {face.right(), face.foot()});
  if (flaps.top > Length{})
    fold_along(sheet, {face.x, face.y}, {face.right(), face.y});
  if (flaps.bottom > Length{})
    fold_along(sheet, {face.x, face.foot()}, {face.right(), face.foot()});
}

Meets met(Length flap) { return flap > Length{} ? Meets::fold : Meets::sheet_edge; }

// Seen from the back, left and right change places.
void set_in(Side &side, bool front, const Edges &flaps) {
  const Length left = front ? flaps.left : flaps.right, right = front ? flaps.right : flaps.left;
  for (Place &place : side.places) {
    place.box = place.box.moved(left, flaps.top);
    place.left = met(left);
    place.right = met(right);
    place.top = met(flaps.top);
    place.bottom = met(flaps.bottom);
  }
}

} // namespace

void add_flaps(const Piece &pocket, Imposition &imposition) {
  const Edges widths = widths_of(**pocket.flaps, pocket.at_page % 2 != 0);
  for (Sheet &sheet : imposition.sheets) {
    const Box face{widths.left, widths.top, sheet.size.width, sheet.size.height};
    sheet.size = {sheet.size.width + widths.left + widths.right,
                  sheet.size.height + widths.top + widths.bottom};
    sheet.turns_upright = true;
    set_in(sheet.sides[0], true, widths);
    set_in(sheet.sides[1], false, widths);
    fold_flaps(sheet, widths, face);
  }
}

void hide_glue(CopyPart &part) {
  const Piece &piece = *part.piece;
  const int under = part.imposition.page_count;
  if (!piece.is_tipped_in() || piece.at_page == 0 || under < 2)
    return;
  // The underside is seen from behind: what is glued at its front's left is at its own right.
  const auto edge = edge_on(piece.glued->edge, piece.at_page % 2 == 0);
  const Spotted &spot = part.imposition.where[static_cast<std::size_t>(under)];
  for (Place &place : part.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
                          .sides[static_cast<std::size_t>(spot.side)]
                          .places)
    if (place.page == under)
      place.hidden.*edge = piece.glued->width;
}

} // namespace bodkin
