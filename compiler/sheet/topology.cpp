#include "sheet/topology.hpp"

namespace bodkin {
namespace {

constexpr std::array page_edges{Toward::left, Toward::up, Toward::right, Toward::down};

// A direction of a page that stands upright, when its head points there.
Toward rotated(Toward way, Toward head) {
  return static_cast<Toward>((static_cast<int>(way) + static_cast<int>(head)) % 4);
}

// Which part of a strip one sheet is; the whole of a sheet that stands alone.
struct StripPart {
  int first_column = 0, first_row = 0, columns = 1, rows = 1;
};

StripPart part_of(const FoldedSheet &folded, const Layout &layout, int sheet) {
  const auto columns = static_cast<int>(folded.across.size());
  const auto rows = static_cast<int>(folded.down.size());
  StripPart part{0, 0, columns, rows};
  if (layout.kind != Layout::Kind::strip)
    return part;
  const bool down = folded.tab->at == Part::bottom;
  (down ? part.first_row : part.first_column) = sheet * (down ? rows : columns);
  return part;
}

// By side and panel of the whole: the page there, or -1.
std::array<std::vector<int>, 2> pages_by_panel(const FoldedSheet &folded) {
  std::array<std::vector<int>, 2> pages;
  for (std::vector<int> &side : pages)
    side.assign(folded.edges.size(), -1);
  for (std::size_t i = 0; i < folded.pages.size(); ++i) {
    const PagePlace &page = folded.pages[i];
    pages[page.front ? 0 : 1][folded.panel(page.column, page.row)] = static_cast<int>(i);
  }
  return pages;
}

// Where the next sheet of a strip is glued on, each sheet ends.
bool at_seam(const FoldedSheet &folded, const PagePlace &page, Toward way) {
  if (!folded.tab || lies_sideways(way) != (folded.tab->at == Part::right))
    return false;
  const auto each =
      static_cast<int>(lies_sideways(way) ? folded.across.size() : folded.down.size());
  const int at = (lies_sideways(way) ? page.column : page.row) % each;
  return way == Toward::left || way == Toward::up ? at == 0 : at == each - 1;
}

Meets met(const FoldedSheet &folded, const PagePlace &page, Toward way) {
  if (at_seam(folded, page, way))
    return Meets::sheet_edge;
  const std::size_t panel = folded.panel(page.column, page.row);
  const PanelEdge edge = folded.edges[panel][static_cast<std::size_t>(way)];
  if (edge == PanelEdge::sheet)
    return Meets::sheet_edge;
  return page.spine && way == *page.spine ? Meets::spine : Meets::fold;
}

void describe(SideCell &cell, const FoldedSheet &folded, const PagePlace &page, bool front) {
  cell.layer = page.layer;
  cell.turn = turn_of(page.head);
  for (std::size_t i = 0; i < page_edges.size(); ++i) {
    const Toward seen = rotated(page_edges[i], page.head);
    const Toward way = front ? seen : mirrored(seen, folded.turns_upright);
    cell.meets[i] = met(folded, page, way);
    if (page.spine && way == *page.spine && page_edges[i] == Toward::left)
      cell.spine = SpineAt::left;
    if (page.spine && way == *page.spine && page_edges[i] == Toward::right)
      cell.spine = SpineAt::right;
    // The tab of the sheet before is glued to the back of a strip's next sheet.
    const bool before = way == Toward::left || way == Toward::up;
    const int at = lies_sideways(way) ? page.column : page.row;
    cell.under_tab[i] = !front && before && at > 0 && at_seam(folded, page, way);
  }
}

std::vector<SideCell> cells_of(const FoldedSheet &folded, const StripPart &part,
                               const std::vector<int> &pages, bool front) {
  std::vector<SideCell> cells;
  for (int row = 0; row < part.rows; ++row)
    for (int column = 0; column < part.columns; ++column) {
      SideCell cell;
      cell.column = column;
      cell.row = row;
      // A back is seen as turned about the leaves' axis.
      const bool x = !front && folded.turns_upright, y = !front && !folded.turns_upright;
      const int on_front = part.first_column + (x ? part.columns - 1 - column : column);
      const int down_front = part.first_row + (y ? part.rows - 1 - row : row);
      if (on_front < folded.columns && down_front < folded.rows)
        cell.page = pages[folded.panel(on_front, down_front)];
      if (cell.page >= 0)
        describe(cell, folded, folded.pages[static_cast<std::size_t>(cell.page)], front);
      cells.push_back(cell);
    }
  return cells;
}

Place place_of(const SideCell &cell, const Layout &layout, int sheet, int page_count) {
  Place place;
  if (cell.page >= 0)
    if (const int page = layout.page_of(sheet, cell.page); page <= page_count)
      place.page = page;
  place.turn = cell.turn;
  place.spine = cell.spine;
  place.left = cell.meets[0];
  place.top = cell.meets[1];
  place.right = cell.meets[2];
  place.bottom = cell.meets[3];
  return place;
}

void lay_side(Imposition &imposition, const std::vector<SideCell> &cells, const Layout &layout,
              int number, int side_number) {
  Side &side = imposition.sheets[static_cast<std::size_t>(number)]
                   .sides[static_cast<std::size_t>(side_number)];
  side.name = side_number == 0 ? SideName::front : SideName::back;
  for (const SideCell &cell : cells) {
    side.places.push_back(place_of(cell, layout, number, imposition.page_count));
    if (const int page = side.places.back().page; page > 0)
      imposition.where[static_cast<std::size_t>(page)] = {number, side_number,
                                                          static_cast<int>(side.places.size()) - 1};
  }
}

} // namespace

std::vector<SheetPattern> patterns_of(const FoldedSheet &folded, const Layout &layout) {
  const auto pages = pages_by_panel(folded);
  const int different = layout.kind == Layout::Kind::strip ? layout.sheets : 1;
  std::vector<SheetPattern> patterns(static_cast<std::size_t>(different));
  for (int sheet = 0; sheet < different; ++sheet) {
    const StripPart part = part_of(folded, layout, sheet);
    SheetPattern &pattern = patterns[static_cast<std::size_t>(sheet)];
    pattern.sides[0] = cells_of(folded, part, pages[0], true);
    if (!folded.one_side)
      pattern.sides[1] = cells_of(folded, part, pages[1], false);
  }
  return patterns;
}

Imposition lay_out(const FoldedSheet &folded, const std::vector<SheetPattern> &patterns,
                   const Layout &layout, int page_count) {
  Imposition result;
  result.page_count = page_count;
  result.folds_into = layout.pages;
  result.pages_a_sheet = layout.pages_a_sheet;
  result.one_side = folded.one_side;
  result.leaves_turn = folded.leaves_turn();
  result.where.resize(static_cast<std::size_t>(page_count) + 1);
  result.sheets.resize(static_cast<std::size_t>(layout.sheets));
  for (int number = 0; number < layout.sheets; ++number) {
    Sheet &sheet = result.sheets[static_cast<std::size_t>(number)];
    sheet.number = number + 1;
    sheet.section = layout.section_of(number);
    sheet.turns_upright = folded.turns_upright;
    for (int side = 0; side < 2; ++side)
      lay_side(result, pattern_of(patterns, number).sides[static_cast<std::size_t>(side)], layout,
               number, side);
    sheet.sides[1].name = SideName::back;
  }
  return result;
}

} // namespace bodkin
