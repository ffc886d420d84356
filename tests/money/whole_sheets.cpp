// Several cut out of one sheet: crossings count whole sheets of every run.
#include "money/bill.hpp"
#include "money/crossings.hpp"
#include "money/manuscript.hpp"
#include "money/shop.hpp"
#include "sheet/numbered.hpp"

#include <doctest/doctest.h>
#include <random>

namespace bodkin::tests {
namespace {

struct Drawn {
  std::mt19937 random;
  std::int64_t number(std::int64_t least, std::int64_t most) {
    return least +
           static_cast<std::int64_t>(random() % static_cast<std::uint32_t>(most - least + 1));
  }
};

// Prices in whole units, `up` copies to a sheet, with steps.
struct Offer {
  std::string name;
  std::int64_t once, each, sheet, up, spare;
  std::int64_t step_from, step_less;

  std::int64_t cost(std::int64_t copies) const {
    const std::int64_t sheets = (copies + spare + up - 1) / up;
    return once + (copies >= step_from ? each - step_less : each) * copies + sheet * sheets;
  }

  Way way() const {
    return {name, [this](std::int64_t copies) {
              const bool stepped = copies >= step_from;
              const Exact rate(sheet);
              Stretch stretch{Exact(once) + Exact::ratio(spare, up) * rate,
                              Exact(stepped ? each - step_less : each) + Exact::ratio(1, up) * rate,
                              stepped ? longest_compared : step_from - 1};
              stretch.spare = spare;
              stretch.rounded = {{Exact::ratio(1, up), Exact(0), rate}};
              return stretch;
            }};
  }
};

std::vector<Crossing> by_trying_each(const std::vector<Offer> &offers) {
  std::vector<Crossing> found;
  std::size_t leader = 0;
  for (std::int64_t copies = 1; copies <= longest_compared; ++copies) {
    std::size_t best = leader;
    for (std::size_t i = 0; i < offers.size(); ++i)
      if (offers[i].cost(copies) < offers[best].cost(copies))
        best = i;
    if (best != leader && copies > 1)
      found.push_back({copies, offers[leader].name, offers[best].name});
    leader = best;
  }
  return found;
}

} // namespace

TEST_CASE("a stretch pays for whole sheets of every run") {
  const Offer offer{"own", 0, 0, 4, 4, 1, longest_compared + 1, 0};
  const Stretch stretch = offer.way().at(1);
  CHECK(stretch.at(3) == Exact(4));
  CHECK(stretch.at(4) == Exact(8));
  CHECK(stretch.at(7) == Exact(8));
}

// Derived: 51 copies and 2 spares laid two up are 27 of each of three sheets, not half of 159.
TEST_CASE("each sheet that is laid several up is printed and bought whole") {
  const std::string manuscript =
      small_zine("  up         2\n", "stock strong like plain\n  costs $0.10 a sheet\n",
                 "page 1-8\n  words \"Rain\" in label\n");
  std::string text = manuscript;
  text.replace(text.find("  size       half-letter"), 24, "  size       quarter-letter");
  text.replace(text.find("  run        50 copies\n"), 23, "  run        51 copies, 2 spare\n");
  text.replace(text.find("  paper      plain"), 18, "  paper      strong");
  const Priced of = priced(text);
  REQUIRE(of.laid.imposition.sheets.size() == 2);
  CHECK(lines(of.estimate) == "108 × 0.10 = 10.80 black sides at copier (printing)\n"
                              "54 × 0.10 = 5.40 strong sheets (paper)\n");
  std::int64_t sheets = 0;
  for (const Sheet &sheet : of.laid.imposition.sheets)
    sheets += sheets_needed(of.edition(), sheet).all;
  CHECK(sheets == 54);
  // One copy more goes on the sheets of this run, the next needs one more of each.
  const Bill used = bill(of.edition(), of.laid.imposition, of.laid.sides, {});
  CHECK(own_stretch(of.edition(), used, 51).at(51) == of.estimate.run_total);
  CHECK(own_stretch(of.edition(), used, 51).at(52) == of.estimate.run_total);
  CHECK(own_stretch(of.edition(), used, 51).at(53) ==
        of.estimate.run_total + Exact::ratio(60, 100));
}

// Derived: 108 sides reach the step at 107, which half of 212 would not.
TEST_CASE("price steps count the sides of whole sheets") {
  std::string text = small_zine("  up         2\n", "", "page 1-8\n  words \"Rain\" in label\n");
  text.replace(text.find("  size       half-letter"), 24, "  size       quarter-letter");
  text.replace(text.find("  run        50 copies\n"), 23, "  run        51 copies, 2 spare\n");
  const std::string_view price = "  prints     black at $0.10 a side\n";
  REQUIRE(text.find(price) != std::string::npos);
  text.insert(text.find(price) + price.size(),
              "  prints     black at $0.05 a side, from 107 sides\n");
  const Priced of = priced(text);
  CHECK(lines(of.estimate).starts_with("108 × 0.05 = 5.40 black sides at copier"));
  const Bill used = bill(of.edition(), of.laid.imposition, of.laid.sides, {});
  CHECK(own_stretch(of.edition(), used, 50).last == 50);
}

TEST_CASE("with whole sheets, crossings are those that pricing every run finds") {
  for (std::uint32_t seed = 1; seed <= 60; ++seed) {
    CAPTURE(seed);
    Drawn drawn{std::mt19937(seed)};
    std::vector<Offer> offers;
    for (const char *name : {"own", "near", "far"}) {
      const std::int64_t each = drawn.number(2, 9);
      offers.push_back({name, drawn.number(0, 60), each, drawn.number(1, 20), drawn.number(1, 8),
                        drawn.number(0, 5), drawn.number(2, 400), drawn.number(0, each - 1)});
    }
    std::vector<Way> ways;
    for (const Offer &offer : offers)
      ways.push_back(offer.way());
    CHECK(compare(ways).crossings == by_trying_each(offers));
  }
}

} // namespace bodkin::tests
