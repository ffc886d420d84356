#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::string rounded(const std::string &step) {
  return booklet("pages 8", "page 3, 4\n  words \"so\" in sign\n"
                            "    at 1/4in from outer, 1/4in from head, 2in x 1in\n"
                            "page 1-2, 5-8\n  words \"so\" in sign\n    at 2in 2in, 2in x 1in\n"
                            "finish\n  fold all\n  " +
                                step + "\n");
}

} // namespace

TEST_CASE("words in a corner that is rounded off are told with how much of them falls") {
  CHECK(inspected(rounded("round 4 corners, radius 1/4in")).found() == "");
  const Inspected it = inspected(rounded("round 4 corners, radius 1 1/2in"));
  // By hand: the ink's outer top corner lies 90pt and 83pt from the curve's middle, so 14pt outside
  // its 108pt.
  CHECK(
      it.told("unsafe-words") ==
      R"(almanac.bodkin:28:5: error: up to 3/16in of the words at the top outer corner of pages 3 and 4 is rounded off [unsafe-words]
  at 1/4in from outer, 1/4in from head, 2in x 1in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   the corners are punched to a curve of 1 1/2in, so that what stands in the tip of one falls
        with it
  type  move it 3/16in inwards, or round the corners less
almanac.bodkin:34:3: note: this rounds them
)");
}

TEST_CASE("two rounded corners are those of the fore-edge") {
  const std::string inner =
      booklet("pages 8",
              "page 3, 4\n  words \"so\" in sign\n    at 0 from inner, 1/4in from head, 2in x 1in\n"
              "page 1-2, 5-8\n  words \"so\" in sign\n    at 2in 2in, 2in x 1in\n"
              "finish\n  fold all\n");
  CHECK(inspected(inner + "  round 2 corners, radius 2in\n").told("unsafe-words") == "");
}
