#include "sheet/fold.hpp"

#include "measure/limits.hpp"
#include "sheet/fold_problems.hpp"

#include <algorithm>
#include <iterator>

namespace bodkin {
namespace {

constexpr Toward across(Toward way) { // seen from behind, the sheet turned about an upright axis
  return way == Toward::left ? Toward::right : way == Toward::right ? Toward::left : way;
}
constexpr Toward over(Toward way) { // turned about an axis that lies across
  return way == Toward::up ? Toward::down : way == Toward::down ? Toward::up : way;
}
constexpr Toward opposite(Toward way) { return across(over(way)); }
constexpr Toward clockwise(Toward way) {
  return static_cast<Toward>((static_cast<int>(way) + 1) % 4);
}

// One panel lying in the stack, and how often (odd or even) it was turned about each axis.
struct Layer {
  int column = 0, row = 0;
  bool turned_across = false, turned_over = false;
  bool first_side_up() const { return turned_across == turned_over; }
  Toward on_sheet(Toward seen) const {
    if (turned_across)
      seen = across(seen);
    return turned_over ? over(seen) : seen;
  }
};
using Pile = std::vector<Layer>; // from the bottom up

struct Stack {
  int columns, rows;
  std::vector<Pile> piles; // row by row
  Pile &at(int column, int row) {
    return piles[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                 static_cast<std::size_t>(column)];
  }
};

Stack flat(const Folding &folding) {
  Stack stack{folding.columns, folding.rows, {}};
  for (int row = 0; row < folding.rows; ++row)
    for (int column = 0; column < folding.columns; ++column)
      stack.piles.push_back({Layer{column, row, false, false}});
  return stack;
}

bool sideways(Part part) { return part == Part::left || part == Part::right; }

Pile turned(const Pile &pile, bool about_upright) {
  Pile result(pile.rbegin(), pile.rend());
  for (Layer &layer : result) {
    bool &flag = about_upright ? layer.turned_across : layer.turned_over;
    flag = !flag;
  }
  return result;
}

Pile laid(Pile resting, const Pile &moving, bool under) {
  resting.insert(under ? resting.begin() : resting.end(), moving.begin(), moving.end());
  return resting;
}

Stack folded(Stack stack, const FoldStep &step) {
  const bool side = sideways(step.moving);
  const int columns = side ? stack.columns / 2 : stack.columns;
  const int rows = side ? stack.rows : stack.rows / 2;
  const int from_column = step.moving == Part::left ? columns : 0;
  const int from_row = step.moving == Part::top ? rows : 0;
  Stack result{columns, rows, {}};
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column) {
      const int x = column + from_column, y = row + from_row;
      const Pile &moving =
          side ? stack.at(stack.columns - 1 - x, y) : stack.at(x, stack.rows - 1 - y);
      result.piles.push_back(laid(stack.at(x, y), turned(moving, side), step.under));
    }
  return result;
}

// Halving creases the sheet at every odd multiple of half the stack's width, which is a whole
// number of panels.
void add_creases(std::vector<Crease> &creases, const Stack &stack, const Folding &folding,
                 const FoldStep &step) {
  const bool side = sideways(step.moving);
  const int panels = side ? folding.columns : folding.rows;
  const int half = (side ? stack.columns : stack.rows) / 2;
  const bool last = &step == &folding.steps.back();
  for (int at = half; at < panels; at += 2 * half)
    creases.push_back({side, at, last});
}

Toward crease_side(Part moving) {
  switch (moving) {
  case Part::left:
    return Toward::left;
  case Part::right:
    return Toward::right;
  case Part::top:
    return Toward::up;
  case Part::bottom:
    return Toward::down;
  }
  return Toward::left;
}

std::vector<Leaf> leaves_of(const Pile &pile, Part last_moved) {
  const Toward spine = crease_side(last_moved);
  const Toward head = clockwise(spine); // with the spine at the left the head is up
  std::vector<Leaf> leaves;
  std::transform(pile.rbegin(), pile.rend(), std::back_inserter(leaves), [&](const Layer &layer) {
    return Leaf{layer.column, layer.row, layer.on_sheet(head), layer.on_sheet(spine),
                layer.first_side_up()};
  });
  return leaves;
}

void see_from_behind(FoldedSheet &sheet) {
  for (Leaf &leaf : sheet.leaves) {
    leaf.column = sheet.columns - 1 - leaf.column;
    leaf.head = across(leaf.head);
    leaf.spine = across(leaf.spine);
    leaf.recto_on_front = !leaf.recto_on_front;
  }
  for (Crease &crease : sheet.creases)
    if (crease.upright)
      crease.at = sheet.columns - crease.at;
}

void turn_half(FoldedSheet &sheet) {
  for (Leaf &leaf : sheet.leaves) {
    leaf.column = sheet.columns - 1 - leaf.column;
    leaf.row = sheet.rows - 1 - leaf.row;
    leaf.head = opposite(leaf.head);
    leaf.spine = opposite(leaf.spine);
  }
  for (Crease &crease : sheet.creases)
    crease.at = (crease.upright ? sheet.columns : sheet.rows) - crease.at;
}

// The sheet lies as the shelf file's author laid it; this settles it as its pages are read: the
// lowest page on the front, upright (or turned a quarter, where the spine lies across the sheet).
void settle(FoldedSheet &sheet) {
  sheet.front_up = sheet.leaves.front().recto_on_front;
  if (!sheet.front_up)
    see_from_behind(sheet);
  const Toward spine = sheet.leaves.front().spine;
  sheet.spine_upright = spine == Toward::left || spine == Toward::right;
  const bool half_turn = turn_of(sheet.leaves.front().head) >= 180;
  if (half_turn)
    turn_half(sheet);
  // A back is seen as turned about the spine's direction; where that lies across, it differs by
  // half a turn from the sheet as it lay.
  const bool steps_turn = half_turn != (!sheet.front_up && !sheet.spine_upright);
  if (steps_turn)
    for (FoldStep &step : sheet.steps)
      step.moving = opposite(step.moving);
}

} // namespace

std::optional<FoldedSheet> fold(const Folding &folding, Problems &problems) {
  const auto most = static_cast<int>(limits::panels);
  if (folding.columns < 1 || folding.rows < 1 || folding.columns > most ||
      folding.rows > most / folding.columns) {
    problems.push_back(too_many_panels(folding));
    return std::nullopt;
  }
  if (folding.sheets && **folding.sheets > limits::pages / 2 / folding.columns / folding.rows) {
    problems.push_back(too_many_sheets(folding));
    return std::nullopt;
  }
  if (folding.steps.empty()) {
    problems.push_back(never_folded(folding));
    return std::nullopt;
  }
  FoldedSheet sheet;
  sheet.columns = folding.columns;
  sheet.rows = folding.rows;
  sheet.steps = folding.steps;
  Stack stack = flat(folding);
  for (const FoldStep &step : folding.steps) {
    if ((sideways(step.moving) ? stack.columns : stack.rows) % 2 != 0) {
      problems.push_back(no_half(folding, step, stack.columns, stack.rows));
      return std::nullopt;
    }
    add_creases(sheet.creases, stack, folding, step);
    stack = folded(std::move(stack), step);
  }
  if (stack.columns != 1 || stack.rows != 1) {
    problems.push_back(not_folded_down(folding, stack.columns, stack.rows));
    return std::nullopt;
  }
  sheet.leaves = leaves_of(stack.piles.front(), folding.steps.back().moving);
  settle(sheet);
  return sheet;
}

} // namespace bodkin
