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

TEST_CASE(
    "work by hand with its middle past the edge is told, and a signature that leaves at all") {
  const auto told = [](std::string_view hand, std::string_view place) {
    return inspected(booklet("pages 4", "page 3\n  hand " + std::string(hand) + "\n    at " +
                                            std::string(place) + "\npage 1-2, 4\n  blank\n"))
        .told("off-the-page");
  };
  CHECK(told("signature \"me\"", "4in 5in, 4in x 1/2in") ==
        "almanac.bodkin:28:5: error: this hand passes the right edge of page 3 by 2 1/2in "
        "[off-the-page]\n"
        "  at 4in 5in, 4in x 1/2in\n"
        "  ~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   page 3 is the right half of sheet 1, back: past its right edge the paper ends\n"
        "  type  at       1 1/2in 5in, 4in x 1/2in\n");
  CHECK(told("signature \"me\"", "1 1/2in 5in, 4in x 1/2in") == "");
  CHECK(told("number \"in pencil\"", "5in 5in, 1in x 1/2in") != "");
  CHECK(told("stamp \"moon\"", "5in 5in, 1in x 1in") == ""); // half of it stays
  CHECK(told("stamp \"moon\"", "5 1/8in 5in, 1in x 1in") != "");
  CHECK(told("tip-in \"leaf\"", "1in 1in, 12in x 12in")
            .ends_with("type  at       0 0, 5 1/2in x 8 1/2in      (smaller, as there is no room "
                       "to move it)\n"));
  CHECK(told("sticker \"dot\"", "7in 10in, 1in x 1in")
            .ends_with("type  at       4 1/2in 7 1/2in, 1in x 1in\n"));
  CHECK(told("sticker \"dot\"", "4 1/2in 7 1/2in, 1in x 1in") == "");
}
