// A straight fold. Through all layers it never makes paper pass through paper: the moving part is
// turned over as one and comes to lie above, or below, everything that rests. Through some layers
// it may, which the proof finds.
#include "sheet/folded_paper.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Cells before `line` (in x, or in y) move, or those from it on.
struct Crossing {
  bool upright = true; // the crease
  bool lower_moves = true;
  int line = 0;
  bool beyond(const PaperCell &cell) const {
    return ((upright ? cell.x : cell.y) < line) == lower_moves;
  }
};

// By cell, of those beyond the line the ones in the layers that are taken up.
std::vector<bool> moving_cells(const FoldedPaper &paper, const FoldStep &how,
                               const Crossing &crossing) {
  std::vector<bool> moves(paper.cells.size());
  for (const CellPile &pile : paper.piles)
    for (std::size_t level = 0; level < pile.size(); ++level) {
      const std::size_t depth = how.under ? level : pile.size() - 1 - level;
      const bool taken = how.layers == 0 || depth < static_cast<std::size_t>(how.layers);
      moves[static_cast<std::size_t>(pile[level])] =
          taken && crossing.beyond(paper.at(pile[level]));
    }
  return moves;
}

bool crosses(const FoldedPaper &paper, const Crossing &crossing, const Joint &joint) {
  return crossing.beyond(paper.at(joint.a)) != crossing.beyond(paper.at(joint.b));
}

Crossing crossing_of(const FoldedPaper &paper, const FoldStep &how, int cells) {
  const bool upright = sideways(how.moving);
  const bool lower = how.moving == Part::left || how.moving == Part::top;
  const int start = upright ? paper.left : paper.top;
  const int extent = upright ? paper.width : paper.height;
  return {upright, lower, lower ? start + cells : start + extent - cells};
}

std::optional<int> creased_panel(const FoldedPaper &paper, const Crossing &crossing,
                                 const std::vector<bool> &moves) {
  for (const Joint &joint : paper.joints)
    if (crosses(paper, crossing, joint) &&
        (moves[static_cast<std::size_t>(joint.a)] || moves[static_cast<std::size_t>(joint.b)]) &&
        paper.panel_of(joint.a) == paper.panel_of(joint.b))
      return paper.panel_of(joint.a);
  return std::nullopt;
}

void turn(PaperCell &cell, const Crossing &crossing) {
  int &along = crossing.upright ? cell.x : cell.y;
  along = 2 * crossing.line - 1 - along;
  bool &flag = crossing.upright ? cell.across : cell.over;
  flag = !flag;
}

struct Extent {
  int left, top, right, bottom;
};
Extent extent_of(const FoldedPaper &paper) {
  Extent extent{paper.cells[0].x, paper.cells[0].y, paper.cells[0].x, paper.cells[0].y};
  for (const PaperCell &cell : paper.cells) {
    extent.left = std::min(extent.left, cell.x);
    extent.right = std::max(extent.right, cell.x);
    extent.top = std::min(extent.top, cell.y);
    extent.bottom = std::max(extent.bottom, cell.y);
  }
  return extent;
}

} // namespace

// Piles anew from two orders of cells, the lower first.
static void pile_up(FoldedPaper &paper, const std::vector<int> &below,
                    const std::vector<int> &above) {
  const Extent extent = extent_of(paper);
  paper.left = extent.left;
  paper.top = extent.top;
  paper.width = extent.right - extent.left + 1;
  paper.height = extent.bottom - extent.top + 1;
  paper.piles.assign(static_cast<std::size_t>(paper.width) * static_cast<std::size_t>(paper.height),
                     {});
  for (const std::vector<int> *cells : {&below, &above})
    for (const int cell : *cells) {
      const PaperCell &place = paper.at(cell);
      paper
          .piles[static_cast<std::size_t>(place.y - paper.top) *
                     static_cast<std::size_t>(paper.width) +
                 static_cast<std::size_t>(place.x - paper.left)]
          .push_back(cell);
    }
}

Folded fold_over(FoldedPaper &paper, const FoldStep &how, int step) {
  const int extent = sideways(how.moving) ? paper.width : paper.height;
  if (how.panels == 0 && extent % 2 != 0)
    return {Hindrance::no_half, -1};
  const int cells = how.panels == 0 ? extent / 2 : how.panels;
  if (cells >= extent)
    return {Hindrance::nothing_there, -1};
  const Crossing crossing = crossing_of(paper, how, cells);
  const std::vector<bool> moves = moving_cells(paper, how, crossing);
  if (const auto panel = creased_panel(paper, crossing, moves))
    return {Hindrance::through_panel, *panel};
  std::vector<int> resting, moving;
  for (const CellPile &pile : paper.piles)
    for (const int cell : pile)
      (moves[static_cast<std::size_t>(cell)] ? moving : resting).push_back(cell);
  std::reverse(moving.begin(), moving.end());
  for (Joint &joint : paper.joints)
    if (crosses(paper, crossing, joint) &&
        (moves[static_cast<std::size_t>(joint.a)] || moves[static_cast<std::size_t>(joint.b)]))
      joint.step = step;
  for (const int cell : moving)
    turn(paper.cells[static_cast<std::size_t>(cell)], crossing);
  if (how.under)
    pile_up(paper, moving, resting);
  else
    pile_up(paper, resting, moving);
  return {};
}

} // namespace bodkin
