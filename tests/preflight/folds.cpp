#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("card on the cover is creased before it is folded") {
  const Inspected it = inspected(booklet("pages 8\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain short
page 1-8
  words "so" in body
finish
  fold all
)"));
  CHECK(it.told("uncreased-card") ==
        R"(almanac.bodkin:33:3: error: card is folded without a crease [uncreased-card]
  fold all
  ~~~~~~~~
  why   110 lb index is 199 gsm; above 150 the surface cracks along a fold that no groove was
        pressed for
  type  crease     cover      (on a line before the fold)
)");
  CHECK(it.edited("uncreased-card").find("  crease     cover\n") != std::string::npos);
}

TEST_CASE("card inside wants every crease") {
  const Inspected it = inspected(booklet("pages 8\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain short
page 1-2
  words "so" in body
page 3 on card
  words "so" in body
page 4-8
  words "so" in body
)"));
  CHECK(it.told("uncreased-card") ==
        R"(almanac.bodkin:27:1: error: card is folded without a crease [uncreased-card]
  stock card
  ~~~~~~~~~~
  why   110 lb index is 199 gsm; above 150 the surface cracks along a fold that no groove was
        pressed for
  type  crease     all      (under `finish`, before the fold)
)");
}

TEST_CASE("a crease before the fold is enough, and paper of 150 gsm needs none") {
  const Inspected it = inspected(booklet("pages 12\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain short
page 1-2
  words "so" in body
page 3 on heavy
  words "so" in body
page 4-12
  words "so" in body
stock heavy
  weight 150 gsm
  sheet letter, grain short
finish
  crease cover
  fold all
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a fold across the grain of heavy paper is a warning") {
  const Inspected it = inspected(booklet("pages 4\ncover on card", R"(stock card
  weight 110 lb index
  sheet letter, grain long
page 1-4
  words "so" in body
finish
  crease cover
  fold all
)"));
  CHECK(it.told("cross-grain") ==
        R"(almanac.bodkin:29:23: warning: card is folded across its grain [cross-grain]
  sheet letter, grain long
                      ~~~~
  why   its fibres run along the sheet's long edge and the fold lies across them; at 199 gsm the
        fold comes out rough and the booklet springs open
  type  sheet      letter, grain short      (if you can buy or cut it grain short)
)");
  CHECK(it.edited("cross-grain").find("  sheet letter, grain short\n") != std::string::npos);
}

TEST_CASE("a fold across the grain of thin paper is a note") {
  const Inspected it = inspected(booklet("pages 4\ncover on thin", R"(stock thin
  weight 20 lb bond
  sheet letter, grain long
page 1-4
  words "so" in body
)"));
  CHECK(it.told("cross-grain") ==
        R"(almanac.bodkin:29:23: note: thin is folded across its grain [cross-grain]
  sheet letter, grain long
                      ~~~~
  why   its fibres run along the sheet's long edge and the fold lies across them; at 75 gsm that
        matters little
  type  sheet      letter, grain short      (if you can buy or cut it grain short)
)");
}

TEST_CASE("a leaflet without a spine is told where its folds cross the grain, and only there") {
  const auto leaflet = [](const std::string &grain) {
    return inspected(booklet("pages 6\nfolding z-fold",
                             "page 1-6 on thin\n  words \"so\" in body\nstock thin\n"
                             "  weight 20 lb bond\n  sheet 16.5in x 8.5in, grain " +
                                 grain + "\n"))
        .told("cross-grain");
  };
  CHECK(leaflet("long").find("note: thin is folded across its grain") != std::string::npos);
  CHECK(leaflet("short") == "");
}
