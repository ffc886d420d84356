#include "money/crossings.hpp"
#include "money/bids.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>
#include <random>

namespace bodkin::tests {
namespace {

Way line(std::string name, std::int64_t at_none, std::int64_t each) {
  return {std::move(name), [=](std::int64_t) {
            return Stretch{Exact(at_none), Exact(each), longest_compared, true};
          }};
}

// Every run of 1 to 100,000 copies priced in whole millionths, the plain way.
struct Counted {
  std::string name;
  std::vector<std::int64_t> cost; // by copies; below 0: no offer
};

std::vector<Crossing> crossings_by_trying_all(const std::vector<Counted> &ways) {
  std::vector<Crossing> found;
  std::size_t leader = 0;
  for (std::size_t copies = 1; copies <= 100'000; ++copies) {
    std::size_t best = leader;
    for (std::size_t i = 0; i < ways.size(); ++i)
      if (ways[i].cost[copies] >= 0 &&
          (ways[best].cost[copies] < 0 || ways[i].cost[copies] < ways[best].cost[copies]))
        best = i;
    if (best != leader && copies > 1)
      found.push_back({static_cast<std::int64_t>(copies), ways[leader].name, ways[best].name});
    leader = best;
  }
  return found;
}

constexpr std::int64_t cent = 10'000; // millionths

struct Drawn {
  std::mt19937 random;
  std::int64_t number(std::int64_t least, std::int64_t most) {
    return least +
           static_cast<std::int64_t>(random() % static_cast<std::uint32_t>(most - least + 1));
  }
};

struct Step {
  std::int64_t from, cents;
};

std::vector<Step> falling(Drawn &drawn, std::int64_t first_from, std::int64_t cents,
                          std::int64_t most_from) {
  std::vector<Step> steps{{first_from, cents}};
  for (std::int64_t i = drawn.number(0, 4); i > 0; --i)
    steps.push_back({drawn.number(2, most_from), drawn.number(1, cents)});
  return steps;
}

// The price of the highest step reached; of two with one beginning the later.
std::int64_t reached(const std::vector<Step> &steps, std::int64_t count) {
  const Step *best = nullptr;
  for (const Step &step : steps)
    if (step.from <= count && (!best || step.from >= best->from))
      best = &step;
  return best ? best->cents : -1;
}

Rate cents(std::int64_t number, Per per) { return {{Decimal{number, 2}, {}}, per, 1}; }

} // namespace

TEST_CASE("a way that costs less each copy crosses just after the point where both cost the same") {
  CHECK(compare({line("own", 0, 3), line("printer", 30, 2)}).crossings ==
        std::vector<Crossing>{{31, "own", "printer"}});
  CHECK(compare({line("own", 0, 3), line("printer", 29, 2)}).crossings ==
        std::vector<Crossing>{{30, "own", "printer"}});
}

TEST_CASE("equals at one copy are led by the first written") {
  const Comparison comparison = compare({line("own", 1, 1), line("printer", 1, 1)});
  CHECK(comparison.at_one_copy == "own");
  CHECK(comparison.crossings.empty());
}

TEST_CASE("ways are compared from the fewest copies that there can be") {
  const std::vector<Way> ways{line("own", 0, 3), line("printer", 30, 2)};
  CHECK(compare(ways, 40).at_one_copy == "printer");
  CHECK(compare(ways, 40).crossings.empty());
}

TEST_CASE("three ways hand on to one another") {
  CHECK(compare({line("own", 0, 10), line("near", 10, 5), line("far", 100, 1)}).crossings ==
        std::vector<Crossing>{{3, "own", "near"}, {23, "near", "far"}});
}

TEST_CASE("a crossing beyond 100,000 copies is none") {
  CHECK(compare({line("own", 0, 2), line("far", 100'000, 1)}).crossings.empty());
  CHECK(compare({line("own", 0, 2), line("far", 99'999, 1)}).crossings ==
        std::vector<Crossing>{{100'000, "own", "far"}});
}

TEST_CASE("crossings are those that pricing every run from 1 to 100,000 finds") {
  for (std::uint32_t seed = 1; seed <= 12; ++seed) {
    CAPTURE(seed);
    Drawn drawn{std::mt19937(seed)};
    Shop shop(static_cast<int>(drawn.number(1, 3)), 50);
    const std::int64_t spare = drawn.number(0, 5);
    shop.edition.run.value.spare = spare;
    const std::int64_t colour_sides = drawn.number(0, 2);
    for (std::int64_t i = 0; i < colour_sides; ++i)
      shop.colour(1, static_cast<int>(i));
    const auto black_sides = static_cast<std::int64_t>(shop.sides.size()) - colour_sides;
    const auto black = falling(drawn, 1, drawn.number(5, 20), 3'000);
    const auto colour = falling(drawn, 1, drawn.number(20, 70), 3'000);
    shop.machine().prints.clear();
    for (const auto &[mode, steps] :
         {std::pair(Mode::black, black), std::pair(Mode::colour, colour)})
      for (const Step &step : steps) {
        SidePrice price;
        price.mode = mode;
        price.rate = cents(step.cents, Per::side);
        price.from_sides = step.from;
        shop.machine().prints.push_back(price);
      }
    const std::int64_t tool = drawn.number(0, 2'000);
    const std::int64_t sticker = drawn.number(0, 9);
    Element &matter = shop.on_page(1, hand(HandKind::sticker, "moon"));
    matter.work.costs = {{cents(tool, Per::once), {}}, {cents(sticker, Per::copy), {}}};

    std::vector<Counted> counted{{"own", {-1}}};
    for (std::int64_t n = 1; n <= 100'000; ++n) {
      const std::int64_t run = n + spare;
      const std::int64_t money =
          black_sides * run * reached(black, black_sides * run) +
          (colour_sides == 0 ? 0 : colour_sides * run * reached(colour, colour_sides * run)) +
          tool + sticker * run;
      counted[0].cost.push_back(money * cent);
    }
    for (const char *name : {"near", "far", "beyond"}) {
      Bid bid;
      bid.name = name;
      const auto steps = falling(drawn, drawn.number(1, 30), drawn.number(50, 400), 20'000);
      for (const Step &step : steps)
        bid.steps.push_back({step.from, cents(step.cents, Per::copy), {}});
      const std::int64_t postage = drawn.number(0, 3'000);
      bid.postage = {{1, cents(postage, Per::once), {}}};
      shop.edition.bids.push_back(bid);
      counted.push_back({name, {-1}});
      for (std::int64_t n = 1; n <= 100'000; ++n) {
        const std::int64_t price = reached(steps, n);
        counted.back().cost.push_back(
            price < 0 ? -1 : (price * n + postage + tool + sticker * n) * cent);
      }
    }
    CHECK(shop.priced().crossings == crossings_by_trying_all(counted));
  }
}

TEST_CASE("a longer run that costs no more is found at the step where it begins") {
  const Edition edition;
  Bid bid;
  bid.steps = {{1, cents(300, Per::copy), {}}, {25, cents(288, Per::copy), {}}};
  const Way way = bare_way(edition, bid);
  const auto cheaper = cheaper_run(way, 24);
  REQUIRE(cheaper);
  CHECK(cheaper->copies == 25);
  CHECK(cheaper->total == Exact(72));
  CHECK_FALSE(cheaper_run(way, 23));
  CHECK_FALSE(cheaper_run(way, 25));
}

} // namespace bodkin::tests
