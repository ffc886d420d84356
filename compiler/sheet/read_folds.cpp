#include "sheet/opening.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace bodkin {
namespace {

struct Seen {
  int x, y;
  PageFace face;
};

// Whole sides of panels that nothing covers, from above or from below, as they lie.
std::vector<Seen> faces_seen(const FoldedPaper &paper, bool from_above) {
  std::vector<int> uncovered(paper.panels());
  std::vector<int> whole(uncovered.size());
  for (int cell = 0; cell < static_cast<int>(paper.cells.size()); ++cell)
    ++whole[static_cast<std::size_t>(paper.panel_of(cell))];
  std::vector<Seen> seen;
  for (const CellPile &pile : paper.piles) {
    if (pile.empty())
      continue;
    const int cell = from_above ? pile.back() : pile.front();
    const auto panel = static_cast<std::size_t>(paper.panel_of(cell));
    const PaperCell &place = paper.at(cell);
    if (++uncovered[panel] != whole[panel])
      continue;
    seen.push_back({place.x,
                    place.y,
                    {static_cast<int>(panel), place.front_up() == from_above,
                     place.on_sheet(Toward::up), std::nullopt, 0}});
  }
  std::sort(seen.begin(), seen.end(), [&](const Seen &a, const Seen &b) {
    const int ax = from_above ? a.x : -a.x, bx = from_above ? b.x : -b.x;
    return std::tie(a.y, ax) < std::tie(b.y, bx);
  });
  return seen;
}

std::vector<int> moved_in(const FoldedPaper &before, const FoldedPaper &after) {
  std::vector<int> moved;
  for (std::size_t cell = 0; cell < before.cells.size(); ++cell)
    if (!(before.cells[cell] == after.cells[cell]))
      moved.push_back(static_cast<int>(cell));
  return moved;
}

// Two flaps that lie nowhere on each other open at once.
bool apart(const FoldedPaper &folded, const std::vector<int> &one, const std::vector<int> &other) {
  std::set<std::pair<int, int>> places;
  for (const int cell : one)
    places.insert({folded.at(cell).x, folded.at(cell).y});
  return std::none_of(other.begin(), other.end(), [&](int cell) {
    return places.count({folded.at(cell).x, folded.at(cell).y}) > 0;
  });
}

// The stage that lies open once all folds are undone that can be undone from `stage` at once.
std::size_t opened_from(const std::vector<FoldedPaper> &stages, std::size_t stage) {
  std::vector<int> flaps = moved_in(stages[stage - 1], stages[stage]);
  std::size_t open = stage - 1;
  while (open > 0) {
    const std::vector<int> next = moved_in(stages[open - 1], stages[open]);
    if (!apart(stages[stage], flaps, next))
      break;
    flaps.insert(flaps.end(), next.begin(), next.end());
    --open;
  }
  return open;
}

} // namespace

PagesMet read_folds(const std::vector<FoldedPaper> &stages, const ReadingRules &rules) {
  PagesMet reading;
  std::set<std::pair<int, bool>> met;
  const auto meet = [&](const std::vector<Seen> &seen) {
    for (const Seen &one : seen)
      if ((!rules.one_side || one.face.front) &&
          met.insert({one.face.panel, one.face.front}).second)
        reading.pages.push_back(one.face);
  };
  std::size_t stage = stages.size() - 1;
  meet(faces_seen(stages[stage], true));
  while (stage > 0) {
    stage = opened_from(stages, stage);
    meet(faces_seen(stages[stage], true));
  }
  meet(faces_seen(stages[0], false));
  return reading;
}

} // namespace bodkin
