#include "sheet/folded_in.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr std::size_t index(int i) { return static_cast<std::size_t>(i); }

// The joints of a folded paper by the cell at their left, or above them.
class Hanging {
public:
  explicit Hanging(const FoldedPaper &paper)
      : paper_(paper), beside_(paper.cells.size()), below_(paper.cells.size()) {
    for (const Joint &joint : paper.joints)
      (joint.side_by_side ? beside_ : below_)[index(joint.a)] = &joint;
  }

  // At an edge of a cell, as the flat sheet has it; null: a free edge.
  const Joint *at(int cell, Toward way) const {
    switch (way) {
    case Toward::right:
      return beside_[index(cell)];
    case Toward::down:
      return below_[index(cell)];
    case Toward::left:
      return cell % paper_.columns == 0 ? nullptr : beside_[index(cell - 1)];
    case Toward::up:
      break;
    }
    return cell < paper_.columns ? nullptr : below_[index(cell - paper_.columns)];
  }

  // Of one row (or column) of the sheet, with no slit between them.
  bool together(int one, int other, bool columns) const {
    const int step = columns ? 1 : paper_.columns;
    const bool same_row = columns ? one / paper_.columns == other / paper_.columns
                                  : one % paper_.columns == other % paper_.columns;
    for (int cell = std::min(one, other); same_row && cell < std::max(one, other); cell += step)
      if (at(cell, columns ? Toward::right : Toward::down) == nullptr)
        return false;
    return same_row;
  }

private:
  const FoldedPaper &paper_;
  std::vector<const Joint *> beside_, below_;
};

int number_of(const FoldedPaper &paper, int cell, bool columns) {
  const int panel = paper.panel_of(cell);
  return columns ? panel % paper.panel_columns : panel / paper.panel_columns;
}

int line_at(const FoldedPaper &paper, int cell, Toward way) {
  const bool after = way == Toward::right || way == Toward::down;
  return number_of(paper, cell, lies_sideways(way)) + (after ? 1 : 0);
}

// How the panels of a cell's row lie, from the first to the last.
std::vector<int> ways_of(const FoldedPaper &paper, int cell, bool columns) {
  std::vector<int> ways(index(columns ? paper.panel_columns : paper.panel_rows));
  const int first = columns ? cell / paper.columns * paper.columns : cell % paper.columns;
  const int step = columns ? 1 : paper.columns, count = columns ? paper.columns : paper.rows;
  for (int i = 0; i < count; ++i) {
    const PaperCell &lies = paper.at(first + i * step);
    ways[index(number_of(paper, first + i * step, columns))] =
        (columns ? lies.across : lies.over) ? -1 : 1;
  }
  return ways;
}

void add(std::vector<FoldedIn> &found, FoldedIn one) {
  const auto same = [&](const FoldedIn &other) {
    return other.columns == one.columns && other.end == one.end && other.against == one.against;
  };
  if (std::none_of(found.begin(), found.end(), same))
    found.push_back(std::move(one));
}

void within(const FoldedPaper &paper, const Hanging &hanging, const std::vector<int> &levels,
            const Joint &crease, std::vector<FoldedIn> &found) {
  const bool columns = crease.side_by_side;
  const PaperCell &lies = paper.at(crease.a);
  const Toward side = lies.on_sheet(crease.of_a());
  const int low = std::min(levels[index(crease.a)], levels[index(crease.b)]);
  const int high = std::max(levels[index(crease.a)], levels[index(crease.b)]);
  const CellPile &pile = paper.pile(lies.x, lies.y);
  for (int level = low + 1; level < high; ++level) {
    const int cell = pile[index(level)];
    const Toward way = paper.at(cell).on_sheet(side);
    const Joint *joint = hanging.at(cell, way);
    if ((joint != nullptr && joint->step >= crease.step) ||
        !hanging.together(cell, crease.a, columns))
      continue;
    const bool far = side == Toward::right || side == Toward::down;
    const int end = line_at(paper, cell, way), against = number_of(paper, crease.b, columns);
    // Of the two panels that may share that end the one that hangs nearer to the crease.
    add(found, {columns, end > against ? end - 1 : end, end, against, far ? 1 : -1, high - low - 1,
                false, 0, ways_of(paper, cell, columns)});
  }
}

// Two free ends of one layer, at the two sides of a line of the folded paper.
void meeting(const FoldedPaper &paper, const Hanging &hanging, int one, int other, bool columns,
             std::vector<FoldedIn> &found) {
  const Toward near = columns ? Toward::right : Toward::down;
  const Toward way = paper.at(one).on_sheet(near),
               way_back = paper.at(other).on_sheet(opposite(near));
  if (hanging.at(one, way) != nullptr || hanging.at(other, way_back) != nullptr ||
      line_at(paper, one, way) == line_at(paper, other, way_back) ||
      !hanging.together(one, other, columns))
    return;
  add(found, {columns, number_of(paper, one, columns), line_at(paper, one, way),
              line_at(paper, other, way_back), 1, 0, true, number_of(paper, other, columns),
              ways_of(paper, one, columns)});
}

void meet_beside(const FoldedPaper &paper, const Hanging &hanging, const PaperCell &at, int level,
                 int cell, std::vector<FoldedIn> &found) {
  const auto other = [&](int x, int y) {
    const CellPile &pile = paper.pile(x, y);
    return index(level) < pile.size() ? pile[index(level)] : -1;
  };
  if (at.x + 1 < paper.left + paper.width)
    if (const int beside = other(at.x + 1, at.y); beside >= 0)
      meeting(paper, hanging, cell, beside, true, found);
  if (at.y + 1 < paper.top + paper.height)
    if (const int below = other(at.x, at.y + 1); below >= 0)
      meeting(paper, hanging, cell, below, false, found);
}

} // namespace

std::vector<FoldedIn> folded_in(const FoldedPaper &paper) {
  const Hanging hanging(paper);
  const std::vector<int> levels = paper.levels();
  std::vector<FoldedIn> found;
  for (const Joint &joint : paper.joints)
    if (joint.step >= 0)
      within(paper, hanging, levels, joint, found);
  for (int cell = 0; cell < static_cast<int>(paper.cells.size()); ++cell)
    meet_beside(paper, hanging, paper.at(cell), levels[index(cell)], cell, found);
  return found;
}

} // namespace bodkin
