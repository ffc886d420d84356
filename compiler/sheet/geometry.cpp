#include "sheet/geometry.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Shares of the sheet meet exactly, whatever the rounding.
Length share(Length whole, int part, int parts) { return whole * part / parts; }

Box panel(const Size &sheet, const FoldedSheet &folded, int column, int row) {
  const Length left = share(sheet.width, column, folded.columns);
  const Length top = share(sheet.height, row, folded.rows);
  return {left, top, share(sheet.width, column + 1, folded.columns) - left,
          share(sheet.height, row + 1, folded.rows) - top};
}

Size upright(const Size &size, int turn) { return turn % 180 == 0 ? size : size.turned(); }

// A box of the page's upright frame, in a panel of which the page is turned clockwise.
Box turned_into(const Box &panel, const Box &in, int turn) {
  const Size frame = upright(panel.size(), turn);
  switch (turn) {
  case 90:
    return {panel.x + frame.height - in.foot(), panel.y + in.x, in.height, in.width};
  case 180:
    return {panel.x + frame.width - in.right(), panel.y + frame.height - in.foot(), in.width,
            in.height};
  case 270:
    return {panel.x + in.y, panel.y + frame.width - in.right(), in.height, in.width};
  default:
    return in.moved(panel.x, panel.y);
  }
}

void place_page(Place &place, const Box &panel, const Size &page) {
  const Size frame = upright(panel.size(), place.turn);
  const Length over = frame.width - page.width;
  const Length head = (frame.height - page.height) / 2;
  const bool recto = place.left == Meets::spine;
  const Box box{recto ? Length() : over, head, page.width, page.height};
  place.box = turned_into(panel, box, place.turn);
  const auto at_edge = [](Meets meets, Length slack) {
    return meets == Meets::sheet_edge ? slack : Length();
  };
  place.slack = {at_edge(place.left, box.x), at_edge(place.top, head),
                 at_edge(place.right, frame.width - box.right()),
                 at_edge(place.bottom, frame.height - box.foot())};
}

// Fibres run along the long edge or the short one; a fold runs along the grain where it is
// parallel.
bool runs_along(bool fold_upright, const Size &sheet, Grain grain) {
  const bool long_edge_upright = sheet.height > sheet.width;
  switch (grain) {
  case Grain::along_long_edge:
    return fold_upright == long_edge_upright;
  case Grain::along_short_edge:
    return fold_upright != long_edge_upright;
  case Grain::unsaid:
    return true;
  }
  return true;
}

} // namespace

Size lying(const Size &sheet, bool across) {
  const Length longer = std::max(sheet.width, sheet.height);
  const Length shorter = std::min(sheet.width, sheet.height);
  return across ? Size{longer, shorter} : Size{shorter, longer};
}

Size sheet_size(const Edition &edition, const FoldedSheet &folded, StockId stock) {
  if (stock != StockId::none && edition[stock].sheet)
    return lying(**edition[stock].sheet, edition.folding->across);
  const Size page = upright(*edition.size, turn_of(folded.leaves.front().head));
  return {page.width * folded.columns, page.height * folded.rows};
}

Size page_given(const FoldedSheet &folded, const Size &sheet) {
  return upright({sheet.width / folded.columns, sheet.height / folded.rows},
                 turn_of(folded.leaves.front().head));
}

void place_pages(const Edition &edition, const FoldedSheet &folded, const SheetPattern &pattern,
                 Sheet &sheet) {
  sheet.size = sheet_size(edition, folded, sheet.stock);
  for (std::size_t s = 0; s < 2; ++s)
    for (std::size_t i = 0; i < sheet.sides[s].places.size(); ++i) {
      const SideCell &cell = pattern.sides[s][i];
      place_page(sheet.sides[s].places[i], panel(sheet.size, folded, cell.column, cell.row),
                 *edition.size);
    }
  const Grain grain = sheet.stock == StockId::none ? Grain::unsaid : *edition[sheet.stock].grain;
  for (const Crease &crease : folded.creases) {
    const Length x = share(sheet.size.width, crease.at, folded.columns);
    const Length y = share(sheet.size.height, crease.at, folded.rows);
    Sheet::FoldLine line;
    line.start = crease.upright ? Spot{x, {}} : Spot{{}, y};
    line.end = crease.upright ? Spot{x, sheet.size.height} : Spot{sheet.size.width, y};
    line.spine = crease.spine;
    line.along_grain = runs_along(crease.upright, sheet.size, grain);
    sheet.folds.push_back(line);
  }
}

} // namespace bodkin
