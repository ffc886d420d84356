#include "money/printing.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {

// The worked example of the trade: 20 pages on 5 letter sheets, 10 sides, black at $0.14 and colour
// at $0.65 (common practice, no source); the sums are derived from these two.
TEST_CASE("twenty pages on five letter sheets are ten sides at the shop's price") {
  Shop shop(5);
  CHECK(shop.priced().per_copy.rounded(2) == "1.40");
  shop.all_in(Mode::colour);
  CHECK(shop.priced().per_copy.rounded(2) == "6.50");
}

TEST_CASE("three colour sides of ten stay under a bid of $3.00 and four do not") {
  Shop shop(5);
  shop.colour(1, 0);
  CHECK(shop.priced().per_copy.rounded(2) == "1.91");
  shop.colour(2, 0);
  shop.colour(3, 0);
  CHECK(shop.priced().per_copy.rounded(2) == "2.93");
  shop.colour(4, 0);
  CHECK(shop.priced().per_copy.rounded(2) == "3.44");
}

TEST_CASE("with paper at $0.037 a sheet three colour sides cost more than a bid of $3.00") {
  Shop shop(5);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("0.037", Per::sheet), {}};
  for (const int sheet : {1, 2, 3})
    shop.colour(sheet, 0);
  CHECK(shop.priced().per_copy.rounded(2, 12) == "3.115");
}

TEST_CASE("spares are charged like copies and spread over the good ones") {
  Shop shop(1, 10);
  shop.edition.run.value.spare = 2;
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "24 × 0.14 = 3.36 black sides at copier (printing)\n");
  CHECK(estimate.per_copy.rounded(2, 12) == "0.336");
  CHECK(estimate.one_more_copy.rounded(2, 12) == "0.28");
}

TEST_CASE("a price step counts the run's sides, spares included, and holds for all of them") {
  Shop shop(1, 9);
  shop.machine().prints.push_back(side_price(Mode::black, "0.09", 20));
  CHECK(lines(shop.priced()) == "18 × 0.14 = 2.52 black sides at copier (printing)\n");
  shop.edition.run.value.spare = 1;
  CHECK(lines(shop.priced()) == "20 × 0.09 = 1.80 black sides at copier (printing)\n");
}

TEST_CASE("a step counts the sides of its own ink only") {
  Shop shop(1, 10);
  shop.machine().prints.push_back(side_price(Mode::black, "0.09", 20));
  shop.colour(1, 0);
  CHECK(lines(shop.priced()) == "10 × 0.65 = 6.50 colour sides at copier (printing)\n"
                                "10 × 0.14 = 1.40 black sides at copier (printing)\n");
}

TEST_CASE(
    "a step counts sides of all sizes, and a size's own price stands in place of the others") {
  Shop shop(2, 10);
  shop.imposition.sheets[1].size = paper_named("tabloid")->turned();
  SidePrice tabloid = side_price(Mode::black, "0.30");
  tabloid.size = paper_named("tabloid");
  SidePrice many = side_price(Mode::black, "0.25", 40);
  many.size = paper_named("tabloid");
  shop.machine().prints.push_back(tabloid);
  shop.machine().prints.push_back(many);
  shop.machine().prints.push_back(side_price(Mode::black, "0.10", 41));
  CHECK(lines(shop.priced()) == "20 × 0.14 = 2.80 black sides at copier (printing)\n"
                                "20 × 0.25 = 5.00 black sides at copier on tabloid (printing)\n");
}

TEST_CASE("each machine counts its own sides") {
  Shop shop(2, 10);
  Machine other = shop.machine();
  other.name = "library";
  other.prints = {side_price(Mode::black, "0.05")};
  shop.edition.machines.push_back(other);
  shop.side(2, 0).machine = shop.side(2, 1).machine = MachineId{1};
  CHECK(lines(shop.priced()) == "20 × 0.14 = 2.80 black sides at copier (printing)\n"
                                "20 × 0.05 = 1.00 black sides at library (printing)\n");
}

TEST_CASE("a blank side is free unless the machine charges blank sides") {
  Shop shop(1, 10);
  shop.blank(1, 1);
  CHECK(shop.priced().run_total.rounded(2) == "1.40");
  shop.machine().blank_charged.value = true;
  CHECK(lines(shop.priced()) == "20 × 0.14 = 2.80 black sides at copier (printing)\n");
}

TEST_CASE("a charged blank side behind a colour side costs the machine's cheapest mode") {
  Shop shop(1, 10);
  shop.machine().blank_charged.value = true;
  shop.colour(1, 0);
  shop.blank(1, 1);
  CHECK(lines(shop.priced()) == "10 × 0.65 = 6.50 colour sides at copier (printing)\n"
                                "10 × 0.14 = 1.40 black sides at copier (printing)\n");
}

TEST_CASE("a blank side is not charged where no pass feeds it with its printed other side") {
  Shop shop(2, 10);
  shop.machine().blank_charged.value = true;
  shop.blank(1, 1, false);
  shop.blank(2, 0, false);
  shop.blank(2, 1, false);
  CHECK(lines(shop.priced()) == "10 × 0.14 = 1.40 black sides at copier (printing)\n");
}

TEST_CASE("a machine's tax is a line of its own on its printing, unrounded") {
  Shop shop(1, 3);
  shop.machine().tax = Known<Share>{{82'500}, {}};
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "6 × 0.14 = 0.84 black sides at copier (printing)\n"
                           "0.84 × 0.0825 = 0.07 tax at copier (tax)\n");
  CHECK(estimate.run_total.rounded(2, 12) == "0.9093");
  CHECK(estimate.one_more_copy.rounded(2, 12) == "0.3031");
}

TEST_CASE("an ink without a price is left out of the sums and told") {
  Shop shop(1, 10);
  shop.machine().prints.pop_back();
  shop.colour(1, 0);
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "10 × 0.14 = 1.40 black sides at copier (printing)\n");
  REQUIRE(estimate.unpriced.size() == 1);
  CHECK(estimate.unpriced[0].what == "colour sides at copier");
  CHECK(estimate.unpriced[0].quantity == 10);
  CHECK(estimate.unpriced[0].reason == Unpriced::Reason::no_price);
}

TEST_CASE("a price that begins above the run's sides is no price for it") {
  Shop shop(1, 10);
  shop.machine().prints = {side_price(Mode::black, "0.05", 21)};
  const Estimate estimate = shop.priced();
  REQUIRE(estimate.unpriced.size() == 1);
  CHECK(estimate.unpriced[0].reason == Unpriced::Reason::below_least_step);
}

TEST_CASE("printing that costs nothing is a line of nothing") {
  Shop shop(1, 10);
  shop.machine().prints = {side_price(Mode::black, "0")};
  CHECK(lines(shop.priced()) == "20 × 0.00 = 0.00 black sides at copier (printing)\n");
}

TEST_CASE("the greatest price and run are added exactly") {
  Shop shop(1, 1'000'000);
  shop.machine().prints = {side_price(Mode::black, "999999999999999")};
  CHECK(shop.priced().run_total.rounded(2) == "1999999999999998000000.00");
}

} // namespace bodkin::tests
