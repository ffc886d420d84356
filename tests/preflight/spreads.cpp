#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("a spread on two sheets is told what the paper will do to it") {
  const Inspected it = inspected(booklet("pages 8", R"(spread 6-7
  patch
    at 4in 1in, 3in x 1in
    fill black
page 1-5, 8
  blank
)"));
  CHECK(
      it.told("split-spread") ==
      R"(almanac.bodkin:26:1: warning: pages 6 and 7 face each other but are two pieces of paper: 6 is plain, sheet 2; 7 is plain, sheet 1 [split-spread]
  spread 6-7
  ~~~~~~~~~~
  why   the halves may miss each other by 0.066in (1/16in of drift, 0.004in of creep); only 4-5 is
        one piece
  type  spread 4-5      (and give pages 6 and 7 to what stands there now)
)");
}

TEST_CASE("a split spread in colour is told what its two sides cost") {
  const Inspected it = inspected(booklet("pages 8", R"(spread 2-3 in colour
  picture "art/red.png"
    at 4in 1in, 3in x 3in
    describe "a red square"
page 1, 6-8
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(
      it.told("split-spread") ==
      R"(almanac.bodkin:26:1: warning: pages 2 and 3 face each other but are two pieces of paper: 2 is plain, sheet 1; 3 is plain, sheet 2 [split-spread]
  spread 2-3 in colour
  ~~~~~~~~~~~~~~~~~~~~
  why   the halves may miss each other by 0.066in (1/16in of drift, 0.004in of creep); sheet 1, back
        (2 and 7) becomes a colour side, $0.40 a copy more; sheet 2, front (3 and 6) becomes a
        colour side, $0.40 a copy more; only 4-5 is one piece
  type  spread 4-5 in colour
)");
  CHECK(it.edited("split-spread").find("spread 4-5 in colour\n") != std::string::npos);
}

TEST_CASE("the centre spread is one piece of paper") {
  const Inspected it = inspected(booklet("pages 8", R"(spread 4-5
  patch
    at 4in 1in, 3in x 1in
    fill black
page 1-3, 6-8
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a deep section pushes the inner half of a spread out by what the dummy says") {
  const Inspected it =
      inspected(booklet("pages 32\nfolding sewn-sections\ncreep 1/8in", R"(spread 6-7
  patch
    at 4in 1in, 3in x 1in
    fill black
page 1-5, 8-32
  blank
)"));
  // Four sheets, 1/8in in all: a third of it from sheet to sheet.
  CHECK(it.told("split-spread").find("(1/16in of drift, 0.042in of creep)") != std::string::npos);
}

TEST_CASE("between two sections nothing but folding parts a spread on two fronts") {
  const Inspected it = inspected(booklet("pages 32\nfolding sewn-sections", R"(spread 16-17
  patch
    at 4in 1in, 3in x 1in
    fill black
page 1-15, 18-32
  blank
)"));
  CHECK(it.told("split-spread").find("the halves meet as well as the sheets are folded") !=
        std::string::npos);
}

TEST_CASE("a spread with nothing across its fold may lie on two sheets") {
  const Inspected it = inspected(booklet("pages 8", R"(spread 6-7
  patch
    at 1in 1in, 3in x 1in
    fill black
page 1-5, 8
  blank
)"));
  CHECK(it.found() == "");
}
