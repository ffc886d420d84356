#include "sheet/opening.hpp"

#include <algorithm>
#include <set>

namespace bodkin {
namespace {

// Panels from the top down; none where they do not all cover the same places in the same order.
std::vector<int> panels_of_pile(const FoldedPaper &paper) {
  std::vector<int> panels;
  for (const CellPile &pile : paper.piles) {
    std::vector<int> here;
    std::transform(pile.rbegin(), pile.rend(), std::back_inserter(here),
                   [&](int cell) { return paper.panel_of(cell); });
    if (&pile != &paper.piles.front() && here != panels)
      return {};
    panels = std::move(here);
  }
  std::set<int> once(panels.begin(), panels.end());
  return once.size() == panels.size() && panels.size() == paper.panels() ? panels
                                                                         : std::vector<int>{};
}

// A fold of the pile: at which edge, and between which layers from the top.
struct PileFold {
  Toward edge;
  int upper, lower;
};
std::vector<PileFold> folds_of(const FoldedPaper &paper) {
  const std::vector<int> levels = paper.levels();
  std::vector<PileFold> folds;
  for (const Joint &joint : paper.joints) {
    const PaperCell &a = paper.at(joint.a), &b = paper.at(joint.b);
    if (joint.step < 0 || a.x != b.x || a.y != b.y)
      continue;
    const auto top = static_cast<int>(paper.pile(a.x, a.y).size()) - 1;
    const int one = top - levels[static_cast<std::size_t>(joint.a)];
    const int other = top - levels[static_cast<std::size_t>(joint.b)];
    folds.push_back({a.on_sheet(joint.of_a()), std::min(one, other), std::max(one, other)});
  }
  return folds;
}

// Turned so that the spine lies at the left.
Toward as_in_hand(Toward edge, Toward spine) {
  return static_cast<Toward>((static_cast<int>(edge) - static_cast<int>(spine) + 7) % 4);
}

// Between layer i and the one below it.
std::vector<bool> gaps_held_shut(const std::vector<PileFold> &folds, std::size_t layers,
                                 Toward spine) {
  std::vector<int> starts(layers + 1);
  for (const PileFold &fold : folds)
    if (fold.edge != spine) {
      ++starts[static_cast<std::size_t>(fold.upper)];
      --starts[static_cast<std::size_t>(fold.lower)];
    }
  std::vector<bool> shut(layers);
  int holding = 0;
  for (std::size_t gap = 0; gap + 1 < layers; ++gap) {
    holding += starts[gap];
    shut[gap] = holding > 0;
  }
  return shut;
}

std::optional<std::size_t> not_held(const std::vector<PileFold> &folds, std::size_t layers,
                                    Toward spine, const std::vector<bool> &shut) {
  std::vector<bool> held(layers);
  for (const PileFold &fold : folds)
    if (fold.edge == spine)
      held[static_cast<std::size_t>(fold.upper)] = held[static_cast<std::size_t>(fold.lower)] =
          true;
  // Layers that are held shut are one leaf and hold each other.
  for (std::size_t first = 0, end = 0; first < layers; first = end) {
    bool any = false;
    do
      any = any || held[end];
    while (shut[end++] && end < layers);
    if (!any)
      return first;
  }
  return std::nullopt;
}

// The two panels of a strip that hang on one other each.
std::vector<int> ends_of(const FoldedPaper &paper) {
  std::vector<int> joints(paper.cells.size());
  for (const Joint &joint : paper.joints) {
    ++joints[static_cast<std::size_t>(joint.a)];
    ++joints[static_cast<std::size_t>(joint.b)];
  }
  std::vector<int> ends;
  for (std::size_t cell = 0; cell < joints.size(); ++cell)
    if (joints[cell] < 2)
      ends.push_back(paper.panel_of(static_cast<int>(cell)));
  return ends;
}

// The gap between the two ends; none where other panels lie between them.
std::optional<std::size_t> pasted_gap(const FoldedPaper &paper, const std::vector<int> &panels) {
  const std::vector<int> ends = ends_of(paper);
  for (std::size_t gap = 0; ends.size() == 2 && gap + 1 < panels.size(); ++gap)
    if ((panels[gap] == ends[0] && panels[gap + 1] == ends[1]) ||
        (panels[gap] == ends[1] && panels[gap + 1] == ends[0]))
      return gap;
  return std::nullopt;
}

bool leaf_front_up(const FoldedPaper &paper, std::size_t layer) {
  const CellPile &pile = paper.piles.front();
  return paper.at(pile[pile.size() - 1 - layer]).front_up();
}

} // namespace

bool all_hang_at(const FoldedPaper &paper, Toward edge) {
  const std::vector<int> panels = panels_of_pile(paper);
  std::vector<bool> hangs(panels.size());
  for (const PileFold &fold : folds_of(paper))
    if (fold.edge == edge && static_cast<std::size_t>(fold.lower) < hangs.size())
      hangs[static_cast<std::size_t>(fold.upper)] = hangs[static_cast<std::size_t>(fold.lower)] =
          true;
  return !hangs.empty() && std::find(hangs.begin(), hangs.end(), false) == hangs.end();
}

bool leaves_hang_at(const FoldedPaper &paper, Toward edge, bool one_side) {
  const std::vector<int> panels = panels_of_pile(paper);
  const std::vector<PileFold> folds = folds_of(paper);
  std::vector<bool> shut(panels.size());
  if (one_side)
    shut = gaps_held_shut(folds, panels.size(), edge);
  return !panels.empty() && !not_held(folds, panels.size(), edge, shut);
}

PagesMet read_leaves(const FoldedPaper &paper, Toward spine, const ReadingRules &rules) {
  PagesMet reading;
  const std::vector<int> panels = panels_of_pile(paper);
  if (panels.empty())
    return {PagesMet::Fault::not_one_pile, -1, {}, {}};
  const std::vector<PileFold> folds = folds_of(paper);
  std::vector<bool> shut = gaps_held_shut(folds, panels.size(), spine);
  if (!rules.one_side) {
    for (const PileFold &fold : folds)
      if (const Toward edge = as_in_hand(fold.edge, spine);
          fold.edge != spine && std::find(reading.cut_open.begin(), reading.cut_open.end(), edge) ==
                                    reading.cut_open.end())
        reading.cut_open.push_back(edge);
    std::sort(reading.cut_open.begin(), reading.cut_open.end());
    shut.assign(panels.size(), false);
  }
  if (rules.ends_pasted) {
    const auto gap = pasted_gap(paper, panels);
    if (!gap)
      return {PagesMet::Fault::not_pasted, -1, {}, {}};
    shut[*gap] = true;
  }
  if (!rules.bound_at_side)
    if (const auto layer = not_held(folds, panels.size(), spine, shut))
      return {PagesMet::Fault::not_held, panels[*layer], {}, {}};
  const bool printed_front = leaf_front_up(paper, 0);
  const Toward head = clockwise(spine); // with the spine at the left the head is up
  for (std::size_t layer = 0; layer < panels.size(); ++layer) {
    const CellPile &pile = paper.piles.front();
    const PaperCell &cell = paper.at(pile[pile.size() - 1 - layer]);
    for (const bool upper_face : {true, false}) {
      const bool front = cell.front_up() == upper_face;
      const bool seen =
          upper_face ? layer == 0 || !shut[layer - 1] : layer + 1 == panels.size() || !shut[layer];
      if (rules.one_side && seen != (front == printed_front))
        return {seen ? PagesMet::Fault::blank_shown : PagesMet::Fault::out_of_sight,
                panels[layer],
                {},
                {}};
      if (seen)
        reading.pages.push_back({panels[layer], front, cell.on_sheet(head), cell.on_sheet(spine),
                                 static_cast<int>(layer)});
    }
  }
  return reading;
}

} // namespace bodkin
