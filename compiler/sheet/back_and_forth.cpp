// A strip of panels folded zigzag: the first lies on top, each next one under it and turned over.
// The strip is straight (of one layer or of several), or winds about the sheet between slits.
#include "sheet/folded_paper.hpp"

#include <algorithm>

namespace bodkin {
namespace {

struct StripPlace {
  int x, y;
};
struct PanelStrip {
  std::vector<StripPlace> places;
  std::optional<int> hindering; // a panel where the strip branches, or that it does not reach
};

// The cells joined to each, the paper lying flat.
std::vector<std::vector<int>> neighbours_of(const FoldedPaper &paper) {
  std::vector<std::vector<int>> neighbours(paper.cells.size());
  for (const Joint &joint : paper.joints) {
    neighbours[static_cast<std::size_t>(joint.a)].push_back(joint.b);
    neighbours[static_cast<std::size_t>(joint.b)].push_back(joint.a);
  }
  return neighbours;
}

// From the end that comes first on the sheet, cell by cell to the other.
PanelStrip winding_strip(const FoldedPaper &paper) {
  const auto neighbours = neighbours_of(paper);
  int start = -1;
  for (std::size_t cell = neighbours.size(); cell-- > 0;) {
    if (neighbours[cell].size() > 2)
      return {{}, paper.panel_of(static_cast<int>(cell))};
    if (neighbours[cell].size() < 2)
      start = static_cast<int>(cell);
  }
  if (start < 0) // a ring has no end to begin at
    return {{}, 0};
  PanelStrip strip;
  for (int before = -1, cell = start; cell >= 0;) {
    strip.places.push_back({paper.at(cell).x, paper.at(cell).y});
    int next = -1;
    for (const int other : neighbours[static_cast<std::size_t>(cell)])
      if (other != before)
        next = other;
    before = cell;
    cell = next;
  }
  return strip;
}

PanelStrip strip_of(const FoldedPaper &paper) {
  if (paper.width == 1 || paper.height == 1) {
    PanelStrip strip;
    for (int y = paper.top; y < paper.top + paper.height; ++y)
      for (int x = paper.left; x < paper.left + paper.width; ++x)
        strip.places.push_back({x, y});
    return strip;
  }
  const bool flat = std::all_of(paper.joints.begin(), paper.joints.end(),
                                [](const Joint &joint) { return joint.step < 0; });
  if (!flat)
    return {{}, 0};
  return winding_strip(paper);
}

std::optional<int> creased_panel(const FoldedPaper &paper, std::size_t first,
                                 const std::vector<std::size_t> &station) {
  for (const Joint &joint : paper.joints) {
    const std::size_t a = station[static_cast<std::size_t>(joint.a)];
    const std::size_t b = station[static_cast<std::size_t>(joint.b)];
    if (a != b && std::max(a, b) > first && paper.panel_of(joint.a) == paper.panel_of(joint.b))
      return paper.panel_of(joint.a);
  }
  return std::nullopt;
}

std::vector<std::size_t> stations_of(const FoldedPaper &paper, const PanelStrip &strip) {
  std::vector<std::size_t> station(paper.cells.size());
  for (std::size_t i = 0; i < strip.places.size(); ++i)
    for (const int cell : paper.pile(strip.places[i].x, strip.places[i].y))
      station[static_cast<std::size_t>(cell)] = i;
  return station;
}

// The pile of the strip's part from `first` on, laid on that place, from the bottom up.
CellPile laid_down(FoldedPaper &paper, const PanelStrip &strip, std::size_t first) {
  std::vector<CellPile> from_top;
  bool across = false, over = false;
  for (std::size_t i = first; i < strip.places.size(); ++i) {
    const StripPlace &place = strip.places[i];
    CellPile pile = paper.pile(place.x, place.y);
    if (i > first) {
      const bool sideways = strip.places[i - 1].y == place.y;
      bool &flag = sideways ? across : over;
      flag = !flag;
    }
    for (const int cell : pile) {
      PaperCell &moved = paper.cells[static_cast<std::size_t>(cell)];
      moved.across = moved.across != across;
      moved.over = moved.over != over;
      moved.x = strip.places[first].x;
      moved.y = strip.places[first].y;
    }
    if (across != over)
      std::reverse(pile.begin(), pile.end());
    from_top.push_back(std::move(pile));
  }
  CellPile all;
  for (std::size_t i = from_top.size(); i-- > 0;)
    all.insert(all.end(), from_top[i].begin(), from_top[i].end());
  return all;
}

CellPile &pile_at(FoldedPaper &paper, const StripPlace &place) {
  return paper
      .piles[static_cast<std::size_t>(place.y - paper.top) * static_cast<std::size_t>(paper.width) +
             static_cast<std::size_t>(place.x - paper.left)];
}

// What stays flat before `first` keeps its places; the paper now covers no more than those.
void pile_up(FoldedPaper &paper, const PanelStrip &strip, std::size_t first,
             const CellPile &folded) {
  const FoldedPaper before = paper;
  const auto kept = strip.places.begin() + static_cast<std::ptrdiff_t>(first) + 1;
  const auto less_x = [](const StripPlace &a, const StripPlace &b) { return a.x < b.x; };
  const auto less_y = [](const StripPlace &a, const StripPlace &b) { return a.y < b.y; };
  const auto [left, right] = std::minmax_element(strip.places.begin(), kept, less_x);
  const auto [top, bottom] = std::minmax_element(strip.places.begin(), kept, less_y);
  paper.left = left->x;
  paper.top = top->y;
  paper.width = right->x - left->x + 1;
  paper.height = bottom->y - top->y + 1;
  paper.piles.assign(static_cast<std::size_t>(paper.width) * static_cast<std::size_t>(paper.height),
                     {});
  for (std::size_t i = 0; i < first; ++i)
    pile_at(paper, strip.places[i]) = before.pile(strip.places[i].x, strip.places[i].y);
  pile_at(paper, strip.places[first]) = folded;
}

} // namespace

Folded fold_back_and_forth(FoldedPaper &paper, const FoldStep &how, int step) {
  const PanelStrip strip = strip_of(paper);
  if (strip.hindering)
    return {Hindrance::no_strip, *strip.hindering};
  if (strip.places.size() < 2)
    return {Hindrance::nothing_there, -1};
  const auto first = static_cast<std::size_t>(how.from - 1);
  if (first + 1 >= strip.places.size())
    return {Hindrance::no_such_start, -1};
  const std::vector<std::size_t> station = stations_of(paper, strip);
  if (const auto panel = creased_panel(paper, first, station))
    return {Hindrance::through_panel, *panel};
  for (Joint &joint : paper.joints) {
    const std::size_t a = station[static_cast<std::size_t>(joint.a)];
    const std::size_t b = station[static_cast<std::size_t>(joint.b)];
    if (a != b && std::max(a, b) > first)
      joint.step = step;
  }
  const CellPile folded = laid_down(paper, strip, first);
  pile_up(paper, strip, first, folded);
  return {};
}

} // namespace bodkin
