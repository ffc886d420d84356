#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

namespace {

std::string told(std::string_view trim) {
  return inspected(booklet("pages 4", "page 1-4\n  blank\nfinish\n  fold all\n  trim " +
                                          std::string(trim) + "\n"))
      .told("trimmed-away");
}

} // namespace

TEST_CASE(
    "a knife that leaves nothing of a page is an error, and one that leaves little a warning") {
  CHECK(told("fore-edge 1/8in, head 1/8in, foot 1/8in") == "");
  CHECK(
      told("fore-edge 6in") ==
      R"(almanac.bodkin:30:3: error: the knife takes 6in off pages that are 5 1/2in wide [trimmed-away]
  trim fore-edge 6in
  ~~~~~~~~~~~~~~~~~~
  why   nothing of them would be left
  type  trim       fore-edge 1/8in      (with what is really to be cut off)
)");
  CHECK(told("head 4in, foot 1in")
            .find("warning: the knife takes 5in off pages that are 8 1/2in "
                  "high") != std::string::npos);
}
