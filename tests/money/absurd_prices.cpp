#include "money/manuscript.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

std::string told_of(std::string_view sheet, std::string_view black, std::string_view colour) {
  const Priced it = priced(small_edition(
      "pages 4\n", fmt::format("stock card\n  weight 20 lb bond\n  sheet letter\n  costs {}\n"
                               "machine press\n  prints black at {}\n  prints colour at {}\n"
                               "  duplex by machine\n"
                               "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n"
                               "page 1-4 on card by press\n  words \"x\" in label\n",
                               sheet, black, colour)));
  std::string messages;
  for (const Problem &problem :
       price_problems(it.edition(), it.laid.imposition, it.laid.sides, it.estimate, it.sources()))
    if (problem.check == "absurd-price")
      messages += problem.message + "\n";
  return messages;
}

} // namespace

TEST_CASE("ordinary prices, a dear handmade paper and free paper are taken as they are") {
  CHECK(told_of("$9.50 per 500 sheets", "$0.12 a side", "$0.60 a side") == "");
  CHECK(told_of("$3 a sheet", "$0.12 a side", "$0.60 a side") == "");
  CHECK(told_of("$0 a sheet", "$0.12 a side", "$0.12 a side") == "");
}

TEST_CASE("a pack's price for each sheet is told") {
  CHECK(told_of("$9.50 a sheet", "$0.12 a side", "$0.60 a side") ==
        "a sheet of card costs $9.50, as much as 79 sides printed at press\n");
}

TEST_CASE("a side that has lost its point is told") {
  CHECK(told_of("$0.02 a sheet", "$45 a side", "$60 a side") ==
        "a side at press costs $45.00, as much as 2250 sheets of card\n"
        "a side at press costs $60.00, as much as 3000 sheets of card\n");
}

TEST_CASE("colour below black is told") {
  CHECK(told_of("$0.02 a sheet", "$0.60 a side", "$0.12 a side") ==
        "press prints colour at $0.12 a side, for less than black at $0.60\n");
}

} // namespace bodkin::tests
