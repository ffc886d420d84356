#include "money/more_sheets.hpp"
#include "money/manuscript.hpp"
#include "problems/render.hpp"
#include "sheet/impose.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// Black at $0.12 a side and letter paper at $18.50 for 500: the figures of the project's own
// design.
std::string pages_of_words(int pages, std::string_view more = "") {
  return fmt::format(R"(edition "Test"
  size half-letter
  pages {0}
  run 1 copies
  paper plain
  machine copier
{1}
stock plain
  weight 28 lb bond
  sheet letter
  costs $18.50 per 500 sheets
machine copier
  prints black at $0.12 a side
face typed from "Courier Prime"
style label
  face typed 9/11
page 1-{0}
  words "x" in label
)",
                     pages, more);
}

std::string why_it_does_not_fold(const std::string &manuscript) {
  const Priced it = priced(manuscript);
  Problems problems;
  const Imposition imposition = impose(it.edition(), it.sources(), problems);
  price_more_sheets(it.edition(), imposition, it.laid.sides, it.draws, it.sources(), problems);
  const auto problem = std::find_if(problems.begin(), problems.end(),
                                    [](const Problem &p) { return p.check == "does-not-fold"; });
  return problem == problems.end() ? std::string() : problem->why;
}

} // namespace

TEST_CASE("a sheet that is not filled is told with its two sides and its paper") {
  CHECK(why_it_does_not_fold(pages_of_words(21)) ==
        "a letter sheet folded once carries 4 pages: page 21 needs a sixth sheet and leaves 22, 23 "
        "and 24 blank, for $0.28 a copy more");
}

TEST_CASE("where no sheet can be left out there is nothing to compare with") {
  CHECK(why_it_does_not_fold(pages_of_words(3)) ==
        "a letter sheet folded once carries 4 pages: pages 1, 2 and 3 leave 4 blank");
}

TEST_CASE("pages that fold are told nothing") {
  CHECK(why_it_does_not_fold(pages_of_words(20)).empty());
}

} // namespace bodkin::tests
