#include "sheet/geometry.hpp"

#include <algorithm>
#include <array>
#include <functional>

namespace bodkin {

std::vector<Length> lines_along(const std::vector<PanelShare> &panels, Length extent) {
  std::int64_t shares = 0;
  Length room = extent;
  for (const PanelShare &panel : panels) {
    shares += panel.share;
    room += panel.less;
  }
  std::vector<Length> lines{Length()};
  std::int64_t so_far = 0;
  Length less;
  for (const PanelShare &panel : panels) {
    so_far += panel.share;
    less += panel.less;
    lines.push_back(room * so_far / std::max<std::int64_t>(shares, 1) - less);
  }
  return lines;
}

namespace {

struct PanelGrid {
  std::vector<Length> x, y;
};

PanelGrid grid_of(const FoldedSheet &folded, const Size &sheet) {
  Size room = sheet;
  if (folded.tab)
    (folded.tab->at == Part::right ? room.width : room.height) -= folded.tab->width;
  return {lines_along(folded.across, room.width), lines_along(folded.down, room.height)};
}

// As seen on one side: a back is turned about the leaves' axis.
PanelGrid seen_from(const FoldedSheet &folded, const Size &sheet, bool front, PanelGrid grid) {
  if (front)
    return grid;
  std::vector<Length> &lines = folded.turns_upright ? grid.x : grid.y;
  const Length extent = folded.turns_upright ? sheet.width : sheet.height;
  std::reverse(lines.begin(), lines.end());
  for (Length &line : lines)
    line = extent - line;
  return grid;
}

Box panel(const PanelGrid &grid, int column, int row) {
  const auto x = static_cast<std::size_t>(column), y = static_cast<std::size_t>(row);
  return {grid.x[x], grid.y[y], grid.x[x + 1] - grid.x[x], grid.y[y + 1] - grid.y[y]};
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

// A panel narrower than the page asked for makes the page narrower.
Size page_on(const Size &frame, const Size &page) {
  return {std::min(frame.width, page.width), std::min(frame.height, page.height)};
}

void place_page(Place &place, const Box &panel, const Size &asked) {
  const Size frame = upright(panel.size(), place.turn);
  const Size page = page_on(frame, asked);
  const Length over = frame.width - page.width;
  const Length head = (frame.height - page.height) / 2;
  const Length left = place.spine == SpineAt::left    ? Length()
                      : place.spine == SpineAt::right ? over
                                                      : over / 2;
  const Box box{left, head, page.width, page.height};
  place.box = turned_into(panel, box, place.turn);
}

// From each edge of a page that meets the sheet's edge to that edge.
void measure_slack(Place &place, const Size &sheet) {
  const std::array<Length, 4> on_sheet{place.box.x, place.box.y, sheet.width - place.box.right(),
                                       sheet.height - place.box.foot()};
  const auto slack = [&](std::size_t edge, Meets meets) {
    const auto turned = edge + static_cast<std::size_t>(place.turn / 90);
    return meets == Meets::sheet_edge ? on_sheet[turned % 4] : Length();
  };
  place.slack = {slack(0, place.left), slack(1, place.top), slack(2, place.right),
                 slack(3, place.bottom)};
}

void hide(Place &place, const SideCell &cell, const Folding &folding) {
  const Length tab = folding.tab ? folding.tab->width : Length();
  const Length held = folding.holes ? folding.holes->from_spine : Length();
  const auto hidden = [&](std::size_t edge, bool at_spine) {
    return std::max(cell.under_tab[edge] ? tab : Length(), at_spine ? held : Length());
  };
  place.hidden = {hidden(0, cell.spine == SpineAt::left), hidden(1, false),
                  hidden(2, cell.spine == SpineAt::right), hidden(3, false)};
}

} // namespace

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

Size lying(const Size &sheet, bool across) {
  const Length longer = std::max(sheet.width, sheet.height);
  const Length shorter = std::min(sheet.width, sheet.height);
  return across ? Size{longer, shorter} : Size{shorter, longer};
}

Size sheet_size(const Edition &edition, const FoldedSheet &folded, StockId stock) {
  if (stock != StockId::none && edition[stock].sheet)
    return lying(**edition[stock].sheet, edition.folding->across);
  const Size page = upright(*edition.size, turn_of(folded.pages.front().head));
  const auto filled = [&](const std::vector<PanelShare> &panels, Length page_extent, bool tab) {
    std::int64_t shares = 0;
    int largest = 1;
    Length less;
    for (const PanelShare &panel : panels) {
      shares += panel.share;
      largest = std::max(largest, panel.share);
      less += panel.less;
    }
    return page_extent * shares / largest - less + (tab ? folded.tab->width : Length());
  };
  const bool right = folded.tab && folded.tab->at == Part::right;
  return {filled(folded.across, page.width, right),
          filled(folded.down, page.height, folded.tab && !right)};
}

Size page_given(const FoldedSheet &folded, const Size &sheet) {
  const PanelGrid grid = grid_of(folded, sheet);
  const auto widest = [](const std::vector<Length> &lines) {
    Length most = lines[1] - lines[0];
    for (std::size_t i = 1; i + 1 < lines.size(); ++i)
      most = std::max(most, lines[i + 1] - lines[i]);
    return most;
  };
  return upright({widest(grid.x), widest(grid.y)}, turn_of(folded.pages.front().head));
}

bool has_room(const FoldedSheet &folded, const Size &sheet) {
  const PanelGrid grid = grid_of(folded, sheet);
  const auto rising = [](const std::vector<Length> &lines) {
    return std::adjacent_find(lines.begin(), lines.end(), std::greater_equal<>()) == lines.end();
  };
  return rising(grid.x) && rising(grid.y);
}

namespace {

// The lines of one sheet out of those of a strip: a fold where the next sheet is glued on lies at
// the tab's edge of the sheet before.
std::optional<SheetLine> on_sheet(const FoldedSheet &folded, const Sheet &sheet, SheetLine line) {
  if (!folded.tab)
    return line;
  const bool right = folded.tab->at == Part::right;
  const auto each = static_cast<int>(right ? folded.across.size() : folded.down.size());
  const int before = (sheet.number - 1) * each;
  if (line.upright == right) {
    line.at -= before;
    return line.at > 0 && line.at <= each ? std::optional(line) : std::nullopt;
  }
  line.first = std::max(line.first - before, 0);
  line.last = std::min(line.last - before, each);
  return line.first < line.last ? std::optional(line) : std::nullopt;
}

Sheet::FoldLine drawn_line(const PanelGrid &grid, const SheetLine &line) {
  const auto at = static_cast<std::size_t>(line.at), first = static_cast<std::size_t>(line.first),
             last = static_cast<std::size_t>(line.last);
  Sheet::FoldLine drawn;
  drawn.start = line.upright ? Spot{grid.x[at], grid.y[first]} : Spot{grid.x[first], grid.y[at]};
  drawn.end = line.upright ? Spot{grid.x[at], grid.y[last]} : Spot{grid.x[last], grid.y[at]};
  drawn.spine = line.spine;
  drawn.valley = line.valley;
  drawn.step = line.step;
  return drawn;
}

} // namespace

void place_pages(const Edition &edition, const FoldedSheet &folded, const SheetPattern &pattern,
                 Sheet &sheet) {
  sheet.size = sheet_size(edition, folded, sheet.stock);
  const PanelGrid grid = grid_of(folded, sheet.size);
  for (std::size_t s = 0; s < 2; ++s) {
    const PanelGrid seen = seen_from(folded, sheet.size, s == 0, grid);
    for (std::size_t i = 0; i < sheet.sides[s].places.size(); ++i) {
      const SideCell &cell = pattern.sides[s][i];
      Place &place = sheet.sides[s].places[i];
      place_page(place, panel(seen, cell.column, cell.row), *edition.size);
      measure_slack(place, sheet.size);
      hide(place, cell, *edition.folding);
    }
  }
  if (folded.tab)
    (folded.tab->at == Part::right ? sheet.tabs.right : sheet.tabs.bottom) = folded.tab->width;
  const Grain grain = sheet.stock == StockId::none ? Grain::unsaid : *edition[sheet.stock].grain;
  for (const SheetLine &crease : folded.creases)
    if (const auto line = on_sheet(folded, sheet, crease)) {
      sheet.folds.push_back(drawn_line(grid, *line));
      sheet.folds.back().along_grain = runs_along(line->upright, sheet.size, grain);
    }
  for (const SheetLine &slit : folded.slits)
    sheet.slits.push_back(drawn_line(grid, slit));
}

} // namespace bodkin
