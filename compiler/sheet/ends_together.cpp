// The ends of a strip of two layers (or more, half above and half below a slit) are pushed
// together: the slit opens, the upper layers beside it bend forwards and the lower ones backwards,
// each at the middle, until four arms stand about one line. That line is the spine; the arms wrap
// round it. From the top down they come to lie: the far end, the lower arm, the near end, the upper
// arm.
//
// The strip is worked on as if it lay across; one that lies upright is turned first and back after.
#include "sheet/folded_paper.hpp"

#include <algorithm>

namespace bodkin {
namespace {

struct OpenPart {
  int from = 0, to = 0; // places of the strip beside the slit
};

// The lower and the upper half of each pile are joined nowhere in the open part.
std::vector<bool> held_shut(const FoldedPaper &paper) {
  const std::vector<int> level = paper.levels();
  std::vector<bool> held(static_cast<std::size_t>(paper.width));
  const auto upper = [&](int cell) {
    const auto half = static_cast<int>(paper.pile(paper.at(cell).x, paper.top).size()) / 2;
    return level[static_cast<std::size_t>(cell)] >= half;
  };
  for (const Joint &joint : paper.joints)
    if (upper(joint.a) != upper(joint.b))
      for (const int cell : {joint.a, joint.b})
        held[static_cast<std::size_t>(paper.at(cell).x - paper.left)] = true;
  return held;
}

std::optional<OpenPart> open_part(const FoldedPaper &paper) {
  const std::vector<bool> held = held_shut(paper);
  const auto first = std::find(held.begin(), held.end(), false);
  const auto last = std::find(held.rbegin(), held.rend(), false);
  if (first == held.end())
    return std::nullopt;
  return OpenPart{paper.left + static_cast<int>(first - held.begin()),
                  paper.left + static_cast<int>(held.rend() - last)};
}

// Where a piece of the strip comes to lie: mirrored about a line, or moved along, or neither.
struct Piece {
  int from, to;
  bool lower, upper; // halves of its piles
  bool turned;
  int shift; // new x = shift ± old x
};

void add(std::vector<CellPile> &stacks, FoldedPaper &paper, const Piece &piece, int spine) {
  for (int x = piece.from; x < piece.to; ++x) {
    const CellPile &all = paper.pile(x, paper.top);
    const auto half = static_cast<std::ptrdiff_t>(all.size() / 2);
    CellPile part(piece.lower ? all.begin() : all.begin() + half,
                  piece.upper ? all.end() : all.begin() + half);
    if (!piece.turned)
      std::reverse(part.begin(), part.end()); // from the top down
    const int to = piece.turned ? piece.shift - x : piece.shift + x;
    for (const int cell : part) {
      PaperCell &moved = paper.cells[static_cast<std::size_t>(cell)];
      moved.x = to;
      moved.across = moved.across != piece.turned;
    }
    CellPile &stack = stacks[static_cast<std::size_t>(to - spine)];
    stack.insert(stack.end(), part.begin(), part.end());
  }
}

void transpose(FoldedPaper &paper) {
  for (PaperCell &cell : paper.cells) {
    std::swap(cell.x, cell.y);
    std::swap(cell.across, cell.over);
  }
  std::swap(paper.left, paper.top);
  std::swap(paper.width, paper.height); // piles of one row read alike down one column
}

std::optional<Hindrance> hindered(const FoldedPaper &paper, const std::optional<OpenPart> &open) {
  const bool two_layers = std::all_of(paper.piles.begin(), paper.piles.end(),
                                      [](const CellPile &pile) { return pile.size() % 2 == 0; });
  if (paper.height != 1 || !two_layers || !open)
    return Hindrance::no_slit;
  if (open->from == paper.left || open->to == paper.left + paper.width)
    return Hindrance::no_ends;
  return (open->to - open->from) % 2 != 0 ? std::optional(Hindrance::slit_uneven) : std::nullopt;
}

std::optional<int> creased_panel(const FoldedPaper &paper, const OpenPart &open) {
  const int middle = (open.from + open.to) / 2;
  for (const Joint &joint : paper.joints) {
    const int x = std::max(paper.at(joint.a).x, paper.at(joint.b).x);
    if (paper.at(joint.a).x != paper.at(joint.b).x &&
        (x == open.from || x == middle || x == open.to) &&
        paper.panel_of(joint.a) == paper.panel_of(joint.b))
      return paper.panel_of(joint.a);
  }
  return std::nullopt;
}

void crease(FoldedPaper &paper, const OpenPart &open, int step) {
  const int middle = (open.from + open.to) / 2;
  for (Joint &joint : paper.joints) {
    const int x = std::max(paper.at(joint.a).x, paper.at(joint.b).x);
    if (paper.at(joint.a).x != paper.at(joint.b).x &&
        (x == open.from || x == middle || x == open.to))
      joint.step = step;
  }
}

Folded push_across(FoldedPaper &paper, int step) {
  const std::optional<OpenPart> open = open_part(paper);
  if (const auto why = hindered(paper, open))
    return {why, -1};
  if (const auto panel = creased_panel(paper, *open))
    return {Hindrance::through_panel, *panel};
  crease(paper, *open, step);
  const int a = open->from, b = open->to, m = (a + b) / 2, end = paper.left + paper.width;
  const int longest = std::max({end - b, m - a, a - paper.left});
  std::vector<CellPile> stacks(static_cast<std::size_t>(longest));
  for (const Piece &piece : {
           Piece{b, end, true, true, false, 0},               // the far end stays
           Piece{m, b, true, false, true, 2 * b - 1},         // the lower arm, folded at its middle
           Piece{a, m, true, false, false, b - a},            //
           Piece{paper.left, a, true, true, true, a + b - 1}, // the near end, turned over
           Piece{a, m, false, true, false, b - a},            // the upper arm, round it all
           Piece{m, b, false, true, true, 2 * b - 1},         //
       })
    add(stacks, paper, piece, b);
  for (CellPile &stack : stacks)
    std::reverse(stack.begin(), stack.end());
  paper.left = b;
  paper.width = longest;
  paper.piles = std::move(stacks);
  return {};
}

} // namespace

Folded push_ends_together(FoldedPaper &paper, int step) {
  if (paper.height == 1)
    return push_across(paper, step);
  if (paper.width != 1)
    return {Hindrance::no_slit, -1};
  transpose(paper);
  const Folded folded = push_across(paper, step);
  transpose(paper);
  return folded;
}

} // namespace bodkin
