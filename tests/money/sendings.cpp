// Where the passes of random small editions go, against all assignments priced with a pencil: by
// counting the sides of each ink at each machine, not by the code under test.
#include "money/manuscript.hpp"

#include <array>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <random>
#include <set>

namespace bodkin::tests {
namespace {

struct Dice {
  std::mt19937 generator;
  int below(int sides) { return static_cast<int>(generator() % static_cast<std::uint32_t>(sides)); }
  bool one_in(int sides) { return below(sides) == 0; }
};

// Cents; 0 for the price of an ink that it does not print.
struct Shop {
  std::string name;
  int black = 10, colour = 50, black_step = 0, black_after = 0, setup = 0, least = 0;
  bool thin_only = false, legal_only = false, one_sided = false;
  std::string lines() const {
    const auto money = [](int cents) { return fmt::format("${}.{:02}", cents / 100, cents % 100); };
    std::string text = fmt::format("machine {}\n  bare 1/4in\n", name);
    text += fmt::format("  prints black at {} a side\n", money(black));
    if (black_step > 0)
      text += fmt::format("  prints black at {} a side, from {} sides\n", money(black_after),
                          black_step);
    if (colour > 0)
      text += fmt::format("  prints colour at {} a side\n", money(colour));
    text += thin_only ? "  feeds 16 lb bond to 28 lb bond\n" : "";
    text += legal_only ? "  sizes legal\n" : "  sizes letter, legal\n";
    text += one_sided ? "  duplex none\n" : "  duplex by machine\n";
    text += setup > 0 ? fmt::format("  setup {} a pass\n", money(setup)) : "";
    return text + (least > 0 ? fmt::format("  least {} a run\n", money(least)) : "");
  }
};

Shop random_shop(Dice &dice, int number) {
  Shop shop;
  shop.name = fmt::format("shop-{}", number);
  shop.black = 3 + dice.below(15);
  shop.colour = dice.one_in(3) ? 0 : shop.black + dice.below(60);
  if (dice.one_in(2)) {
    shop.black_step = 2 + dice.below(120);
    shop.black_after = 1 + dice.below(shop.black);
  }
  shop.least = dice.one_in(3) ? 50 + dice.below(1500) : 0;
  shop.thin_only = dice.one_in(3);
  shop.legal_only = dice.one_in(8);
  shop.one_sided = dice.one_in(3);
  // What a shop that prints one side alone calls a pass, another test says.
  shop.setup = !shop.one_sided && dice.one_in(3) ? 20 + dice.below(400) : 0;
  return shop;
}

struct Book {
  std::vector<Shop> shops;
  int copies = 10;
  std::array<bool, 13> draws{}, colour{};
  std::array<int, 3> paper{}; // of each sheet: 0 white, 1 rose, 2 card
  std::string manuscript() const;
};

constexpr std::array<std::string_view, 3> papers{"white", "rose", "card"};
// Twelve pages on three sheets, saddle-stitched: sheet k has 14 - 2k, 2k - 1 on its front and 2k,
// 13 - 2k on its back (trade.md: pages on a side sum to N + 1).
constexpr std::array<std::array<std::array<int, 2>, 2>, 3> pages_on{
    {{{{12, 1}, {2, 11}}}, {{{10, 3}, {4, 9}}}, {{{8, 5}, {6, 7}}}}};

std::string Book::manuscript() const {
  std::string text = "edition \"Test\"\n  size half-letter\n  pages 12\n";
  text += fmt::format("  run {} copies\n  paper white\n  machine {}", copies, shops[0].name);
  for (std::size_t i = 1; i < shops.size(); ++i)
    text += " or " + shops[i].name;
  text += "\nstock white\n  weight 20 lb bond\n  sheet letter, grain short\n  costs included\n"
          "stock rose like white\n  tint #f3b3c0\n"
          "stock card like white\n  weight 110 lb index\n";
  for (const Shop &shop : shops)
    text += shop.lines();
  text += "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n";
  for (std::size_t page = 1; page <= 12; ++page) {
    int sheet = 0;
    for (int s = 0; s < 3; ++s)
      for (const auto &side : pages_on[static_cast<std::size_t>(s)])
        for (const int on : side)
          sheet = on == static_cast<int>(page) ? s : sheet;
    text += fmt::format("page {}{} on {}\n", page, colour[page] ? " in colour" : "",
                        papers[static_cast<std::size_t>(paper[static_cast<std::size_t>(sheet)])]);
    text += draws[page] ? "  words \"x\" in label\n" : "  blank\n";
  }
  return text;
}

Book random_book(Dice &dice) {
  Book book;
  for (int i = 0, shops = 2 + dice.below(2); i < shops; ++i)
    book.shops.push_back(random_shop(dice, i));
  book.copies = 1 + dice.below(40);
  for (std::size_t page = 1; page <= 12; ++page) {
    book.draws[page] = !dice.one_in(3);
    book.colour[page] = book.draws[page] && dice.one_in(5);
  }
  for (int &paper : book.paper)
    paper = dice.below(3);
  return book;
}

// What goes together: the sheets of a paper that are alike in ink and in being printed on both
// sides.
struct Sides {
  int black = 0, colour = 0;
  bool both = false, any = false;
};
using LoadKey = std::array<int, 3>;

struct PencilLoad {
  int paper = 0, black = 0, colour = 0;
  bool both = false;
};

Sides sides_of(const Book &book, int sheet) {
  Sides out;
  int printed = 0;
  for (const auto &side : pages_on[static_cast<std::size_t>(sheet)]) {
    bool draws = false, colour = false;
    for (const int page : side) {
      draws = draws || book.draws[static_cast<std::size_t>(page)];
      colour = colour || book.colour[static_cast<std::size_t>(page)];
    }
    printed += draws ? 1 : 0;
    (colour ? out.colour : out.black) += draws ? 1 : 0;
  }
  out.any = printed > 0;
  out.both = printed == 2;
  return out;
}

std::vector<PencilLoad> loads_of(const Book &book) {
  bool one_sided = false;
  for (const Shop &shop : book.shops)
    one_sided = one_sided || shop.one_sided;
  std::map<LoadKey, PencilLoad> loads;
  for (int sheet = 0; sheet < 3; ++sheet) {
    const Sides sides = sides_of(book, sheet);
    if (!sides.any)
      continue;
    const int paper = book.paper[static_cast<std::size_t>(sheet)];
    PencilLoad &load = loads[{paper, sides.colour > 0 ? 1 : 0, one_sided && sides.both ? 1 : 0}];
    load.paper = paper;
    load.black += sides.black;
    load.colour += sides.colour;
    load.both = load.both || sides.both;
  }
  std::vector<PencilLoad> all;
  for (const auto &[key, load] : loads)
    all.push_back(load);
  return all;
}

bool can(const Shop &shop, const PencilLoad &load) {
  return !(load.colour > 0 && shop.colour == 0) && !(load.paper == 2 && shop.thin_only) &&
         !shop.legal_only && !(load.both && shop.one_sided);
}

// -1 where a shop cannot.
int cents(const Book &book, const std::vector<PencilLoad> &loads, const std::vector<int> &at) {
  int all = 0;
  for (std::size_t s = 0; s < book.shops.size(); ++s) {
    const Shop &shop = book.shops[s];
    int black = 0, colour = 0;
    std::set<int> passes;
    for (std::size_t i = 0; i < loads.size(); ++i) {
      if (at[i] != static_cast<int>(s))
        continue;
      if (!can(shop, loads[i]))
        return -1;
      black += loads[i].black * book.copies;
      colour += loads[i].colour * book.copies;
      passes.insert(loads[i].paper);
    }
    if (black + colour == 0)
      continue;
    const int rate =
        shop.black_step > 0 && black >= shop.black_step ? shop.black_after : shop.black;
    const int sides = black * rate + colour * shop.colour;
    all += std::max(sides + shop.setup * static_cast<int>(passes.size()), shop.least);
  }
  return all;
}

std::optional<int> least_of_all(const Book &book) {
  const std::vector<PencilLoad> loads = loads_of(book);
  std::vector<int> at(loads.size());
  std::optional<int> least;
  for (;;) {
    if (const int here = cents(book, loads, at); here >= 0 && (!least || here < *least))
      least = here;
    std::size_t i = 0;
    while (i < at.size() && ++at[i] == static_cast<int>(book.shops.size()))
      at[i++] = 0;
    if (i == at.size())
      return least;
  }
}

} // namespace

TEST_CASE("of all assignments of the passes to machines that can, the cheapest is chosen") {
  Dice dice{std::mt19937(23)};
  int compared = 0;
  for (int round = 0; round < 400; ++round) {
    const Book book = random_book(dice);
    const std::optional<int> least = least_of_all(book);
    if (!least)
      continue;
    const std::string manuscript = book.manuscript();
    CAPTURE(manuscript);
    const Priced it = priced(manuscript);
    CHECK(it.estimate.unpriced.empty());
    CHECK(it.estimate.run_total == Exact::ratio(*least, 100));
    ++compared;
  }
  CHECK(compared > 150);
}

} // namespace bodkin::tests
