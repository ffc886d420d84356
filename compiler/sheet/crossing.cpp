#include "sheet/crossing.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin {
namespace {

// A joint as it lies at a line of the plane: `near` is the side at the left of it, or above.
struct AtLine {
  int x, y;
  bool upright;
  bool flat;
  bool near_side; // of a fold: the side that its two cells lie on
  int low, high;  // levels of a fold's cells; of a flat joint, the level near and the level far
  const Joint *joint;
};

bool same_line(const AtLine &a, const AtLine &b) {
  return a.x == b.x && a.y == b.y && a.upright == b.upright;
}

AtLine line_beside(const PaperCell &cell, Toward way) {
  switch (way) {
  case Toward::up:
    return {cell.x, cell.y, false, false, false, 0, 0, nullptr};
  case Toward::down:
    return {cell.x, cell.y + 1, false, false, true, 0, 0, nullptr};
  case Toward::left:
    return {cell.x, cell.y, true, false, false, 0, 0, nullptr};
  case Toward::right:
    break;
  }
  return {cell.x + 1, cell.y, true, false, true, 0, 0, nullptr};
}

// None where the paper would have to be torn at this joint.
std::optional<AtLine> as_it_lies(const FoldedPaper &paper, const std::vector<int> &levels,
                                 const Joint &joint) {
  const PaperCell &a = paper.at(joint.a), &b = paper.at(joint.b);
  // Turning paper is its own undoing, so a direction of the sheet becomes one of the plane alike.
  const Toward of_a = a.on_sheet(joint.of_a()), of_b = b.on_sheet(opposite(joint.of_a()));
  AtLine at = line_beside(a, of_a);
  if (!same_line(at, line_beside(b, of_b)))
    return std::nullopt;
  const int level_a = levels[static_cast<std::size_t>(joint.a)];
  const int level_b = levels[static_cast<std::size_t>(joint.b)];
  at.joint = &joint;
  at.flat = of_a != of_b;
  if (at.flat == (a.x == b.x && a.y == b.y))
    return std::nullopt;
  if (at.flat) {
    at.low = at.near_side ? level_a : level_b;
    at.high = at.near_side ? level_b : level_a;
  } else {
    at.low = std::min(level_a, level_b);
    at.high = std::max(level_a, level_b);
  }
  return at;
}

Clash clash(const FoldedPaper &paper, Clash::Kind kind, const Joint &one, const Joint &other) {
  return {kind, paper.panel_of(one.a), paper.panel_of(one.b), paper.panel_of(other.a),
          paper.panel_of(other.b)};
}

struct Event {
  int level;
  const AtLine *joint;
};

// One side of one line, its joints met from the lowest layer up.
std::optional<Clash> clash_on_side(const FoldedPaper &paper, const std::vector<const AtLine *> &all,
                                   bool near_side) {
  std::vector<Event> events;
  for (const AtLine *joint : all) {
    if (joint->flat)
      events.push_back({near_side ? joint->low : joint->high, joint});
    else if (joint->near_side == near_side) {
      events.push_back({joint->low, joint});
      events.push_back({joint->high, joint});
    }
  }
  std::sort(events.begin(), events.end(),
            [](const Event &a, const Event &b) { return a.level < b.level; });
  std::vector<const AtLine *> open;
  for (const Event &event : events) {
    if (event.joint->flat) {
      if (!open.empty())
        return clash(paper, Clash::Kind::through_fold, *event.joint->joint, *open.back()->joint);
    } else if (event.level == event.joint->low) {
      open.push_back(event.joint);
    } else if (open.back() != event.joint) {
      return clash(paper, Clash::Kind::interlocked, *event.joint->joint, *open.back()->joint);
    } else {
      open.pop_back();
    }
  }
  return std::nullopt;
}

std::optional<Clash> clash_across(const FoldedPaper &paper, std::vector<const AtLine *> all) {
  all.erase(
      std::remove_if(all.begin(), all.end(), [](const AtLine *joint) { return !joint->flat; }),
      all.end());
  std::sort(all.begin(), all.end(),
            [](const AtLine *a, const AtLine *b) { return a->low < b->low; });
  for (std::size_t i = 1; i < all.size(); ++i)
    if (all[i]->high < all[i - 1]->high)
      return clash(paper, Clash::Kind::order, *all[i]->joint, *all[i - 1]->joint);
  return std::nullopt;
}

} // namespace

std::optional<Clash> paper_through_paper(const FoldedPaper &paper) {
  const std::vector<int> levels = paper.levels();
  std::vector<AtLine> joints;
  for (const Joint &joint : paper.joints) {
    const auto at = as_it_lies(paper, levels, joint);
    if (!at)
      return clash(paper, Clash::Kind::torn, joint, joint);
    joints.push_back(*at);
  }
  std::stable_sort(joints.begin(), joints.end(), [](const AtLine &a, const AtLine &b) {
    return std::tie(a.upright, a.y, a.x) < std::tie(b.upright, b.y, b.x);
  });
  for (std::size_t first = 0; first < joints.size();) {
    std::vector<const AtLine *> here;
    std::size_t end = first;
    for (; end < joints.size() && same_line(joints[first], joints[end]); ++end)
      here.push_back(&joints[end]);
    for (const bool near_side : {true, false})
      if (auto found = clash_on_side(paper, here, near_side))
        return found;
    if (auto found = clash_across(paper, here))
      return found;
    first = end;
  }
  return std::nullopt;
}

} // namespace bodkin
