// A second and different simulation against the compiler's, on foldings that nobody chose. Nothing
// here knows cells that move: the paper is one row (or one grid) of panels told as permutations, a
// fold rewrites the order in which they lie.
#include "sheet/crossing.hpp"
#include "sheet/fold.hpp"
#include "sheet/paper.hpp"
#include "sheet/refold.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <map>
#include <random>
#include <set>
#include <tuple>

using namespace bodkin;
using test::Desk;

namespace {

// What lies at each spot of the table, as the panels' numbers from the bottom up, each with a sign:
// which side is up. The spots are told by their distance from the top left of what lies there now.
struct Stack {
  int columns, rows;
  std::map<std::pair<int, int>, std::vector<int>> at; // +n: panel n - 1, front up; -n: back up

  std::vector<int> lifted(std::pair<int, int> spot) const {
    std::vector<int> up = at.at(spot);
    std::reverse(up.begin(), up.end());
    for (int &panel : up)
      panel = -panel;
    return up;
  }
};

Stack laid_flat(int columns, int rows) {
  Stack stack{columns, rows, {}};
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column)
      stack.at[{column, row}] = {row * columns + column + 1};
  return stack;
}

// Mirrored and numbered anew so that every fold is one of the left part over the right.
Stack mirrored(const Stack &stack, bool transposed, bool from_far) {
  Stack result{
      transposed ? stack.rows : stack.columns, transposed ? stack.columns : stack.rows, {}};
  for (const auto &[spot, panels] : stack.at) {
    auto [x, y] = transposed ? std::pair(spot.second, spot.first) : spot;
    result.at[{from_far ? result.columns - 1 - x : x, y}] = panels;
  }
  return result;
}

Stack left_over_right(const Stack &stack, int panels, bool under) {
  const int rest = stack.columns - panels, columns = std::max(panels, rest);
  Stack result{columns, stack.rows, {}};
  for (int row = 0; row < stack.rows; ++row)
    for (int x = 0; x < columns; ++x) {
      std::vector<int> &pile = result.at[{x, row}];
      std::vector<int> resting, moving;
      if (x < rest)
        resting = stack.at.at({panels + x, row});
      if (x < panels)
        moving = stack.lifted({panels - 1 - x, row});
      pile = under ? moving : resting;
      pile.insert(pile.end(), under ? resting.begin() : moving.begin(),
                  under ? resting.end() : moving.end());
    }
  return result;
}

// The result lies with its crease at the left (or the side that was chosen): turned back.
Stack done(const Stack &stack, const FoldStep &step) {
  const bool transposed = step.moving == Part::top || step.moving == Part::bottom;
  const bool far = step.moving == Part::right || step.moving == Part::bottom;
  const Stack turned = mirrored(stack, transposed, far);
  const int panels = step.panels == 0 ? turned.columns / 2 : step.panels;
  const Stack folded = left_over_right(turned, panels, step.under);
  if (!transposed)
    return mirrored(folded, false, far);
  Stack back = mirrored(folded, false, far);
  return mirrored(back, true, false);
}

class Dice {
public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }

private:
  std::mt19937 engine_; // the same numbers everywhere, as the standard says
};

// Folds by halves or by some panels until one panel is left.
Folding thrown(Dice &dice) {
  Folding folding;
  folding.name = "thrown";
  folding.across = dice.below(2) == 0;
  folding.columns = 1 + dice.below(6);
  folding.rows = 1 + dice.below(4);
  folding.one_side = false;
  folding.gather.value = dice.below(2) == 0 ? Gather::nested : Gather::one_after_another;
  Stack stack = laid_flat(folding.columns, folding.rows);
  while (stack.columns > 1 || stack.rows > 1) {
    const bool across = stack.rows == 1 || (stack.columns > 1 && dice.below(2) == 0);
    const int extent = across ? stack.columns : stack.rows;
    FoldStep step;
    step.moving = across ? (dice.below(2) == 0 ? Part::left : Part::right)
                         : (dice.below(2) == 0 ? Part::top : Part::bottom);
    step.under = dice.below(2) == 0;
    // More than half would lie past the rest for ever and ever, if never folded back.
    step.panels =
        extent % 2 == 0 && dice.below(2) == 0 ? 0 : 1 + dice.below(std::max(1, extent / 2));
    folding.steps.push_back(step);
    stack = done(stack, step);
  }
  return folding;
}

std::vector<int> pile_of(const Folding &folding) {
  Stack stack = laid_flat(folding.columns, folding.rows);
  for (const FoldStep &step : folding.steps)
    stack = done(stack, step);
  return stack.at.at({0, 0});
}

} // namespace

TEST_CASE("a thousand random foldings pile up as a second simulation has it") {
  Dice dice(20'261'125);
  int books = 0, folders = 0;
  for (int i = 0; i < 1000; ++i) {
    const Folding folding = thrown(dice);
    if (folding.steps.empty())
      continue;
    CAPTURE(i);
    const std::vector<FoldedPaper> stages = stages_of(folding);
    REQUIRE(stages.size() == folding.steps.size() + 1);
    const FoldedPaper &paper = stages.back();
    REQUIRE(paper.piles.size() == 1);
    std::vector<int> signs;
    for (const int cell : paper.piles.front())
      signs.push_back(paper.at(cell).front_up() ? cell + 1 : -cell - 1);
    CHECK(signs == pile_of(folding));
    CHECK_FALSE(paper_through_paper(paper).has_value());

    // And the pages, by geometry: paper on a table, folded and opened as rectangles.
    Desk desk(4);
    desk.fold_as(folding);
    Problems problems;
    const Imposition imposition = impose(desk.edition, desk.sources, problems);
    CHECK(test::refold(imposition, folding) == "");
    ++(imposition.leaves_turn ? books : folders);
  }
  CHECK(books > 100);
  CHECK(folders > 100);
}

TEST_CASE("whole copies of random foldings hold each page once, front and back of one leaf") {
  Dice dice(7);
  for (int i = 0; i < 300; ++i) {
    const Folding folding = thrown(dice);
    if (folding.steps.empty())
      continue;
    Problems none;
    const auto sheet = fold(folding, none);
    REQUIRE(sheet);
    const int each = static_cast<int>(sheet->pages.size());
    Desk desk(3 * each);
    desk.fold_as(folding);
    const Imposition imposition = desk.impose(); // refolds it
    // Panels all alike, folded into each other at random, buckle; the paper folds all the same.
    std::erase_if(desk.problems, [](const Problem &p) { return p.check == "panel-buckles"; });
    CHECK(test::messages(desk.problems) == "");
    std::set<int> pages;
    for (const Sheet &one : imposition.sheets)
      for (const Side &side : one.sides)
        for (const Place &place : side.places)
          pages.insert(place.page);
    CHECK(pages.size() == static_cast<std::size_t>(3 * each));
    CHECK(*pages.begin() == 1);
    CHECK(*pages.rbegin() == 3 * each);
  }
}

TEST_CASE("random strips fold back and forth from any panel") {
  Dice dice(99);
  for (int i = 0; i < 200; ++i) {
    Folding folding;
    folding.name = "thrown";
    folding.columns = 2 + dice.below(30);
    FoldStep zigzag;
    zigzag.kind = FoldKind::back_and_forth;
    zigzag.from = 1 + dice.below(folding.columns - 1);
    folding.steps = {zigzag};
    FoldedPaper paper = flat_paper(folding);
    REQUIRE_FALSE(do_step(paper, zigzag, 0).hindrance.has_value());
    CHECK_FALSE(paper_through_paper(paper).has_value());
    CHECK(paper.width == zigzag.from);
    // The strip lies panel by panel under its start, every second one turned over.
    const CellPile &pile = paper.pile(zigzag.from - 1, 0);
    for (std::size_t level = 0; level < pile.size(); ++level) {
      const int panel = folding.columns - 1 - static_cast<int>(level);
      CHECK(pile[level] == panel);
      CHECK(paper.at(panel).front_up() == ((panel - zigzag.from + 1) % 2 == 0));
    }
  }
}
