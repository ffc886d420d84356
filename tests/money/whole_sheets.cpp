// Several cut out of one sheet: crossings count whole sheets of every run.
#include "money/crossings.hpp"

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
