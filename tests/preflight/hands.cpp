#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

namespace {

std::string numbered(std::string_view by_hand) {
  return booklet("pages 4\ncounts 1-10", "page 1-3\n  blank\npage 4\n  hand number \"in pencil\"\n"
                                         "    at 1in 1in, 1in x 1/2in\n    " +
                                             std::string(by_hand) + "\n");
}

} // namespace

TEST_CASE("a copy that bears one number by the edition is not given another by hand") {
  CHECK(inspected(numbered("counts 1-10")).told("counts-differ") == "");
  const Inspected it = inspected(numbered("counts 5-14"));
  CHECK(
      it.told("counts-differ") ==
      R"(almanac.bodkin:32:12: error: the first copy is number 5 here, and 1 by the edition's counts [counts-differ]
  counts 5-14
         ~~~~
  why   a copy that bears two numbers can be signed off by neither
  type  counts     1-10
almanac.bodkin:7:10: note: the edition's numbers
)");
}

TEST_CASE("as many numbers as copies, by hand as by the edition") {
  CHECK(inspected(numbered("counts 1-8"))
            .told("counts-differ")
            .find("8 numbers for a run of 10 copies") != std::string::npos);
}
