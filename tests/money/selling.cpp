// What comes back: the table, a shop that keeps a share, the post; and what was really paid.
#include "money/manuscript.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

Priced selling(std::string_view facts) { return priced(small_zine(facts, "")); }

std::string problems(std::string_view facts) {
  std::string said;
  const Priced of = selling(facts);
  for (const Problem &problem :
       price_problems(of.edition(), of.laid.imposition, of.laid.sides, of.estimate, of.sources()))
    said += problem.check + ": " + problem.message + "\n";
  return said;
}

} // namespace

// A run of fifty costs $20, a copy $0.40; the sums are derived from these.
TEST_CASE("each way of selling brings its price less the shop's share and what the sale costs") {
  const Sales sales = *selling("  price $2 a copy\n"
                               "  sells 20 copies \"at the table\"\n"
                               "  sells 20 copies \"at the shop\", share 40%\n"
                               "  sells 6 copies \"by post\", at $3 a copy, costs $1.25 a copy\n"
                               "  gives 3 copies \"to those who wrote in it\"\n")
                           .estimate.sales;
  REQUIRE(sales.ways.size() == 3);
  CHECK(sales.ways[0].brings == Exact(2));
  CHECK(sales.ways[0].margin == Exact::ratio(16, 10));
  CHECK(sales.ways[0].paid_after == 10);
  CHECK(sales.ways[1].keeps == Exact::ratio(8, 10));
  CHECK(sales.ways[1].brings == Exact::ratio(12, 10));
  CHECK(sales.ways[1].paid_after == 17);
  CHECK(sales.ways[2].brings == Exact::ratio(175, 100));
  CHECK(sales.ways[2].paid_after == 12);
  CHECK(sales.sold == 46);
  CHECK(sales.given == 3);
  CHECK(sales.left == 1);
  CHECK(sales.income == Exact::ratio(745, 10));
  CHECK(sales.remains == Exact::ratio(545, 10));
  CHECK(sales.paid_after == 10);
}

TEST_CASE("the copies that pay for the run are counted in the order of the lines") {
  const Sales sales = *selling("  price $1 a copy\n"
                               "  sells 15 copies \"at the table\"\n"
                               "  sells 30 copies \"at the shop\", share 50%\n")
                           .estimate.sales;
  CHECK(sales.paid_after == 25);
  CHECK_FALSE(selling("  price $0.40 a copy\n  sells 49 copies \"at the table\"\n")
                  .estimate.sales->paid_after);
  CHECK(selling("  price $0.40 a copy\n  sells 50 copies \"at the table\"\n")
            .estimate.sales->paid_after == 50);
}

TEST_CASE("a cost once is earned back before the run is") {
  const Sales sales =
      *selling("  sells 50 copies \"at the fair\", at $1 a copy, costs $8 once\n").estimate.sales;
  CHECK(sales.ways[0].paid_after == 28);
  CHECK(sales.income == Exact(42));
}

TEST_CASE("more copies spoken for than are made is an error") {
  CHECK(problems("  price $2 a copy\n  sells 48 copies \"at the table\"\n  gives 3 copies\n") ==
        "more-than-made: 48 copies are sold and 3 given away, and 50 are made\n");
  CHECK(problems("  price $2 a copy\n  sells 47 copies \"at the table\"\n  gives 3 copies\n")
            .empty());
}

TEST_CASE("a run too small for what is sold of it keeps its spares in the line to type") {
  std::string text = small_zine("  price $2 a copy\n  sells 60 copies \"at the table\"\n"
                                "    only plain\n",
                                "");
  const std::size_t run = text.find("  run ");
  text.replace(run, text.find('\n', run) - run,
               "  run 45 copies, 3 spare called plain\n  run 25 copies called gold");
  const Priced of = priced(text);
  const Problems told =
      price_problems(of.edition(), of.laid.imposition, of.laid.sides, of.estimate, of.sources());
  REQUIRE(told.size() == 1);
  CHECK(told[0].message == "60 copies plain are sold, and 45 are made");
  CHECK(told[0].type[0].line == "run 60 copies, 3 spare called plain");
}

TEST_CASE("a way of selling without a price, and one that loses money, are told") {
  CHECK(problems("  sells 5 copies \"at the table\"\n") ==
        "no-sale-price: what is a copy sold for at the table?\n");
  CHECK(problems("  price $0.60 a copy\n  sells \"at the shop\", share 50%\n") ==
        "sold-at-loss: a copy sold at the shop brings $0.30, and costs $0.40 to make\n");
}

TEST_CASE("a price below what a copy costs is told, and a copy for nothing is not") {
  CHECK(problems("  price $0.30 a copy\n") ==
        "sold-at-loss: a copy sold for $0.30 costs $0.40 to make\n");
  CHECK(problems("  price $0 a copy\n").empty());
  CHECK(problems("  price $0.40 a copy\n").empty());
}

TEST_CASE("a sale that takes more than it brings, and a share of all, are told as such") {
  CHECK(problems("  price $2 a copy\n  sells \"by post\", at $1 a copy, costs $3 a copy\n") ==
        "sold-at-loss: a copy sold by post costs $2.00 more than it brings, and costs $0.40 to "
        "make\n");
  const Priced of = selling("  price $2 a copy\n  sells \"at the shop\", share 100%\n");
  CHECK(
      of.price_problems_text().find(
          "type  whoever keeps the whole price pays for no copy: agree on a share that leaves you "
          "some\n") != std::string::npos);
}

TEST_CASE("more spoken for than is made: the line of the run keeps its spares") {
  std::string manuscript = small_zine("  price $2 a copy\n  sells 60 copies \"here\"\n", "");
  manuscript.replace(manuscript.find("50 copies"), 9, "50 copies, 2 spare");
  CHECK(priced(manuscript).price_problems_text().find("type  run        60 copies, 2 spare ") !=
        std::string::npos);
}

TEST_CASE("what was really paid stands beside what the estimate takes out of the purse") {
  const Estimate estimate = selling("  paid $12 for printing\n"
                                    "  paid $10.50 for printing\n"
                                    "  paid $22.50\n")
                                .estimate;
  REQUIRE(estimate.paid.size() == 2);
  CHECK(estimate.paid[0].what == "printing");
  CHECK(estimate.paid[0].paid == Exact::ratio(225, 10));
  CHECK(estimate.paid[0].estimated == Exact(20));
  CHECK(estimate.paid[1].what == "everything");
  CHECK(estimate.paid[1].estimated == Exact(20));
}

} // namespace bodkin::tests
