#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("a leg that leaves little to bend over is a warning") {
  const Inspected it = inspected(booklet("pages 8\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain short
  caliper 0.1in
page 1-8
  words "so" in body
finish
  crease cover
  fold all
  staple 2, leg 3/16in, 2in from head and foot
)"));
  CHECK(it.told("weak-staple") ==
        R"(almanac.bodkin:36:17: warning: a leg of 3/16in leaves 0.084in to bend over [weak-staple]
  staple 2, leg 3/16in, 2in from head and foot
                ~~~~~~
  why   2 sheets make 0.104in at the fold; a staple wants 1/8in beyond the paper to hold, and under
        1/16in it pulls out
  type  staple     2, leg 1/4in, 2in from head and foot
)");
}

TEST_CASE("a leg shorter than the pile does not go through") {
  const Inspected it = inspected(booklet("pages 8\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain short
  caliper 0.3in
page 1-8
  words "so" in body
finish
  crease cover
  fold all
  staple 2, leg 1/4in, 2in from head and foot
)"));
  CHECK(it.told("weak-staple") ==
        R"(almanac.bodkin:36:17: error: a leg of 1/4in does not go through the fold [weak-staple]
  staple 2, leg 1/4in, 2in from head and foot
                ~~~~~
  why   2 sheets make 0.304in at the fold; a staple wants 1/8in beyond the paper to hold, and under
        1/16in it pulls out
  type  staple     2, leg 1/2in, 2in from head and foot
)");
  CHECK(it.edited("weak-staple").find("  staple     2, leg 1/2in, 2in from head and foot\n") !=
        std::string::npos);
}

TEST_CASE("legs that would cross in the middle are noted") {
  const Inspected it = inspected(booklet("pages 4", R"(page 1-4
  words "so" in body
finish
  fold all
  staple 2, leg 1/2in, 2in from head and foot
)"));
  CHECK(it.told("long-staple") ==
        R"(almanac.bodkin:30:17: note: a leg of 1/2in is long for 0.004in of paper [long-staple]
  staple 2, leg 1/2in, 2in from head and foot
                ~~~~~
  why   1 sheet makes 0.004in at the fold, which leaves 0.496in to bend over; over 1/4in the legs
        cross, stand up and scratch
  type  staple     2, leg 1/4in, 2in from head and foot
)");
  CHECK(it.edited("long-staple").find("  staple     2, leg 1/4in, 2in from head and foot\n") !=
        std::string::npos);
}

TEST_CASE("a quarter inch leg holds a thin booklet") {
  const Inspected it = inspected(booklet("pages 8", R"(page 1-8
  words "so" in body
finish
  fold all
  staple 2, leg 1/4in, 2in from head and foot
)"));
  CHECK(it.found() == "");
}
