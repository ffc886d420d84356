// What wraps and inserts cost, and what offers of printers leave out.
#include "edition/reading.hpp"
#include "money/manuscript.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::priced;
using bodkin::tests::small_edition;

namespace {

// Ten copies of four pages on one sheet: 10 sheets at $0.02, 20 black sides at $0.10.
tests::Priced with(const std::string &pieces, const std::string &facts = "") {
  return priced(
      small_edition(facts, "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\n"
                           "page 1-4\n  words \"x\" in body\n" +
                               pieces));
}

// Without counting by hand, the number of a line of the estimate.
std::string quantity(const Estimate &estimate, std::string_view what) {
  for (const EstimateLine &line : estimate.lines)
    if (line.what == what)
      return line.quantity.rounded(0, 2);
  return "none";
}

} // namespace

TEST_CASE("a book by itself") {
  const tests::Priced made = with("");
  CHECK(quantity(made.estimate, "black sides at copier") == "20");
  CHECK(quantity(made.estimate, "plain sheets") == "10");
  CHECK(made.estimate.run_total.rounded(2) == "2.20");
}

TEST_CASE("an insert adds its sheet and the sides that print on it") {
  tests::Priced made = with("insert map\n  size letter\n  page 1\n    words \"y\" in body\n"
                            "  page 2\n    blank\n");
  made.draws = {false, true, true, true, true, true, false};
  made.laid = lay(made.edition(), made.draws, made.sources());
  made.estimate = estimate(made.edition(), made.laid.imposition, made.laid.sides);
  CHECK(quantity(made.estimate, "black sides at copier") == "30");
  CHECK(quantity(made.estimate, "plain sheets") == "20");
}

TEST_CASE("two of an insert in each copy cost twice, four on a sheet a quarter, to whole sheets") {
  const auto sheets = [](const std::string &facts) {
    const tests::Priced made =
        with("insert slip\n  size quarter-letter\n" + facts + "  page 1\n    blank\n");
    return quantity(made.estimate, "plain sheets");
  };
  CHECK(sheets("  up 4\n") == "13");            // 10 + 10 / 4, and the last sheet is whole
  CHECK(sheets("  up 4\n  count 2\n") == "15"); // 10 + 20 / 4
  CHECK(sheets("  up 4\n  count 3\n") == "18"); // 10 + 30 / 4
}

TEST_CASE("an offer covers the book alone: what lies beside it stays the maker's and is priced") {
  tests::Priced made = with("insert map\n  size letter\n  page 1\n    words \"y\" in body\n"
                            "  page 2\n    blank\n"
                            "bid mail-order\n  prints black\n  copies 1 at $0.30 a copy\n");
  made.draws = {false, true, true, true, true, true, false};
  made.laid = lay(made.edition(), made.draws, made.sources());
  made.estimate = estimate(made.edition(), made.laid.imposition, made.laid.sides);
  REQUIRE(made.estimate.bids.size() == 1);
  const BidFigures &bid = made.estimate.bids.front();
  CHECK(bid.run_total->rounded(2) == "3.00");
  CHECK(bid.like_for_like->rounded(2) == "4.20"); // 10 sides at $0.10, 10 sheets at $0.02
  REQUIRE_FALSE(bid.still_yours.empty());
  CHECK(bid.still_yours.back() == "map: $1.20");
}
