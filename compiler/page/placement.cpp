#include "page/placement.hpp"

#include <algorithm>

namespace bodkin {
namespace {

bool is_left(int page) { return page % 2 == 0; }

Box margins_of(const Edition &edition, const Size &size, int page) {
  const Margins &m = *edition.margins;
  const Edges edges = is_left(page) ? Edges{m.outer, m.head, m.inner, m.foot}
                                    : Edges{m.inner, m.head, m.outer, m.foot};
  return inside(size, edges);
}

// From the outer edge of one box to the outer edge of another that lies one page to the right.
Box joined(const Box &left, const Box &right, Length page_width) {
  const Length top = std::max(left.y, right.y);
  const Length foot = std::min(left.foot(), right.foot());
  return {left.x, top, page_width + right.right() - left.x, foot - top};
}

} // namespace

Ground ground_of(const Edition &edition, const Imposition &imposition, int page) {
  const Size size = imposition.size_of(page);
  return {size, live_area(edition, imposition, page).box(size), margins_of(edition, size, page),
          is_left(page), page == 1 ? imposition.panels : std::vector<BandPart>{}};
}

Ground ground_of(const Edition &edition, const Imposition &imposition, const Spread &spread) {
  const Ground left = ground_of(edition, imposition, spread.left);
  const Ground right = ground_of(edition, imposition, spread.right);
  const Length width = left.size.width;
  return {{width + right.size.width, edition.size->height},
          joined(left.live, right.live, width),
          joined(left.margins, right.margins, width),
          true};
}

Box area_of(const Ground &ground, Area area) {
  switch (area) {
  case Area::page:
    return {{}, {}, ground.size.width, ground.size.height};
  case Area::live:
    return ground.live;
  case Area::margins:
  case Area::place:
    break;
  }
  return ground.margins;
}

Box box_of(const At &at, Size size, const Ground &ground) {
  return {offset_of(at.across, size.width, ground.size.width, ground.left_page),
          offset_of(at.down, size.height, ground.size.height, true), size.width, size.height};
}

Box box_of(const Cells &cells, const Edition &edition, const Ground &ground) {
  const Grid grid = edition.grid ? **edition.grid : Grid{};
  const Box &area = ground.margins;
  // Cell edges are cut from the whole, so that rounding never adds up along a row.
  const auto from = [](Length whole, Length gap, int count, int index) {
    return (whole + gap) * (index - 1) / count;
  };
  const Length left = from(area.width, grid.gap, grid.columns, cells.first_column);
  const Length top = from(area.height, grid.gap, grid.rows, cells.first_row);
  const Length right = from(area.width, grid.gap, grid.columns, cells.last_column + 1) - grid.gap;
  const Length foot = from(area.height, grid.gap, grid.rows, cells.last_row + 1) - grid.gap;
  return {area.x + left, area.y + top, right - left, foot - top};
}

namespace {

// One panel of a band as a page of its own: what is live of it, and margins inside it.
Ground on_panel(const Ground &band, const Box &panel) {
  const Box live{std::max(band.live.x - panel.x, Length{}), band.live.y, Length{},
                 band.live.height};
  const Length right = std::min(band.live.right() - panel.x, panel.width);
  const Length margin = std::min(band.margins.x, panel.width / 4);
  Ground ground;
  ground.size = panel.size();
  ground.live = {live.x, live.y, std::max(right - live.x, Length{}), live.height};
  ground.margins = {margin, band.margins.y, panel.width - margin * 2, band.margins.height};
  return ground;
}

} // namespace

Box place_of(const Placement &placement, const Edition &edition, const Ground &ground) {
  for (const BandPart &part : ground.panels)
    if (placement.panel && part.panel == **placement.panel) {
      Placement on_it = placement;
      on_it.panel.reset();
      return place_of(on_it, edition, on_panel(ground, part.box)).moved(part.box.x, part.box.y);
    }
  if (*placement.area != Area::place)
    return area_of(ground, *placement.area);
  if (const At *at = std::get_if<At>(&placement.where); at && at->size)
    return box_of(*at, *at->size, ground);
  if (const Cells *cells = std::get_if<Cells>(&placement.where))
    return box_of(*cells, edition, ground);
  return ground.margins;
}

RangedTo ranged_by(const Placement &placement, const Ground &ground) {
  const At *at = std::get_if<At>(&placement.where);
  if (!at || *placement.area != Area::place)
    return RangedTo::own;
  if (at->across.from == From::outer)
    return ground.left_page ? RangedTo::left : RangedTo::right;
  if (at->across.from == From::inner)
    return ground.left_page ? RangedTo::right : RangedTo::left;
  return RangedTo::own;
}

} // namespace bodkin
