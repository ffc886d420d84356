// Where in a copy a reader's hand gets to.
#include "edition/reading.hpp"
#include "sheet/parts.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

std::string told(const std::string &folding, const std::string &pages, const std::string &size,
                 const std::string &goes, const std::string &finish = "") {
  const tests::Read made = read(
      "edition \"Test\"\n  size " + size + "\n  run 10 copies\n  paper plain\n  machine copier\n" +
      "  folding " + folding + "\nstock plain\n  weight 20 lb bond\n  sheet letter\n" +
      "  costs included\nmachine copier\n  prints black at $0.10 a side\npage 1-" + pages +
      "\n  blank\ninsert slip\n  size 2in x 1in\n  up 4\n  goes " + goes +
      "\n  page 1\n    blank\n" + finish);
  Problems problems;
  impose_parts(made.edition(), *made.sources, problems);
  std::string text;
  for (const Problem &problem : problems)
    if (problem.check == "out-of-reach")
      text += problem.message;
  return text;
}

} // namespace

TEST_CASE("a slip goes between two pages that face each other, not into a leaf") {
  CHECK(told("saddle-stitch", "8", "half-letter", "after 4") == "");
  CHECK(told("saddle-stitch", "8", "half-letter", "after 3") ==
        "slip goes after page 3, but pages 3 and 4 are the two sides of one leaf");
  CHECK(told("saddle-stitch", "8", "half-letter", "after 8") ==
        "slip goes after page 8, which is the last");
  CHECK(told("saddle-stitch", "8", "half-letter", "on 3") == "");
}

TEST_CASE("the inside of a double leaf is not met by a reader") {
  CHECK(told("double-leaves", "8", "half-letter", "after 3") ==
        "slip goes after page 3, but pages 3 and 4 are the outsides of one double leaf");
  CHECK(told("double-leaves", "8", "half-letter", "after 2") == "");
}

// The classic form of eight has 3 above 2, head to head (trade.md: from memory).
TEST_CASE("pages that a fold at the head keeps shut are out of reach until it is cut") {
  const std::string shut = "slip goes between pages 2 and 3, which a fold at the head keeps shut";
  CHECK(told("section-8", "8", "quarter-letter", "after 2") == shut);
  CHECK(told("section-8", "8", "quarter-letter", "on 3") == shut);
  CHECK(told("section-8", "8", "quarter-letter", "after 4") == "");
  CHECK(told("section-8", "8", "quarter-letter", "after 2",
             "finish\n  fold all\n  trim head 1/8in\n") == "");
  CHECK(told("section-8", "8", "quarter-letter", "after 2", "finish\n  fold all\n  cut folds\n") ==
        "");
}
