#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("pages that no line names are noted, with the line that makes it meant") {
  const Inspected it = inspected(booklet("pages 12", R"(page 1-2, 4, 12
  words "so" in body
)"));
  CHECK(
      it.told("unnamed-page") ==
      R"(almanac.bodkin:6:9: note: nothing is said of pages 3 and 5 to 11, so they are blank [unnamed-page]
  pages 12
        ~~
  why   paper is folded whole: a page that carries nothing is still there
  type  page 3, 5-11
          blank      (if that is meant)
)");
}

TEST_CASE("a blank that is meant is not noted") {
  const Inspected it = inspected(booklet("pages 4", R"(page 1
  words "so" in body
page 2-4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("paper that no sheet is printed on is noted") {
  const Inspected it = inspected(booklet("pages 4\ncover on card", R"(stock card
  weight 28 lb bond
  sheet letter, grain short
page 1-4
  words "so" in body
)"));
  CHECK(it.told("unused-paper") ==
        R"(almanac.bodkin:4:9: note: no sheet of this edition is plain [unused-paper]
  paper plain
        ~~~~~
  why   every sheet is told otherwise by a page or by the cover
)");
}
