#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("work that comes too late is told what stands in its way") {
  const Inspected it = inspected(booklet("pages 8", R"(page 1-8
  words "so" in body
finish
  trim fore-edge 1/8in
  fold all
)"));
  CHECK(it.told("order-of-finish") ==
        R"(almanac.bodkin:30:3: error: fold comes after trim (line 29) [order-of-finish]
  fold all
  ~~~~~~~~
  why   the knife cuts the fore-edges of the folded copy; cut flat, the inner sheets would push out
        past the outer ones
  type  fold all      (on a line before `trim`)
almanac.bodkin:29:3: note: trim stands here
)");
  CHECK(it.edited("order-of-finish").find("  fold all\n  trim fore-edge 1/8in\n") !=
        std::string::npos);
}

TEST_CASE("every order that hands cannot do is told") {
  const Inspected it = inspected(booklet("pages 8", R"(page 1-8
  words "so" in body
finish
  staple 2, leg 1/4in, 2in from head and foot
  trim fore-edge 1/8in
  fold all
  crease all
  collate
)"));
  CHECK(it.told("order-of-finish") ==
        R"(almanac.bodkin:31:3: error: fold comes after trim (line 30) [order-of-finish]
  fold all
  ~~~~~~~~
  why   the knife cuts the fore-edges of the folded copy; cut flat, the inner sheets would push out
        past the outer ones
  type  fold all      (on a line before `trim`)
almanac.bodkin:30:3: note: trim stands here

almanac.bodkin:32:3: error: crease comes after fold (line 31) [order-of-finish]
  crease all
  ~~~~~~~~~~
  why   a crease is pressed into a flat sheet
  type  crease all      (on a line before `fold`)
almanac.bodkin:31:3: note: fold stands here

almanac.bodkin:33:3: error: collate comes after fold (line 31) [order-of-finish]
  collate
  ~~~~~~~
  why   sheets are gathered flat, then folded together
  type  collate      (on a line before `fold`)
almanac.bodkin:31:3: note: fold stands here
)");
}

TEST_CASE("collate, crease, fold, staple, trim is the order of hands") {
  const Inspected it = inspected(booklet("pages 8", R"(page 1-8
  words "so" in body
finish
  collate
  crease all
  fold all
  staple 2, leg 1/4in, 2in from head and foot
  trim fore-edge 1/8in
)"));
  CHECK(it.found() == "");
}

TEST_CASE("sheets that are folded one by one may be gathered after it") {
  const std::string pages = "page 1-16\n  words \"so\" in body\n    at 1in 1in, 1in x 1in\n"
                            "finish\n  fold all\n  collate\n";
  CHECK(
      inspected(booklet("pages 16\nfolding double-leaves", pages)).told("order-of-finish").empty());
  CHECK_FALSE(inspected(booklet("pages 16", pages)).told("order-of-finish").empty());
}
