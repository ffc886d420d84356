#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("the edge of the sheet asks for what the machine leaves bare, the fold for nothing") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/grey.png"
    at 0.1in 1in, 3in x 3in
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:28:5: error: 0.15in of the picture's left side will not print on page 2 [unsafe-art]
  at 0.1in 1in, 3in x 3in
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   page 2 is the left half of sheet 1, back: its left edge is the sheet's edge, where copier
        leaves 1/4in bare; its right edge is the fold, where it may go to the edge
  type  at       1/4in 1in, 3in x 3in
)");
  CHECK(it.edited("unsafe-art").find("    at       1/4in 1in, 3in x 3in\n") != std::string::npos);
}

TEST_CASE("a picture that touches the fold and the bare edge is safe") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/grey.png"
    at 1/4in 1in, 5 1/4in x 5 1/4in
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(it.found() == "");
}

TEST_CASE("a thing on many pages is told once, with the pages that its edge is passed on") {
  const Inspected it = inspected(booklet("pages 8", R"(page 3-6
  words "NOON" in sign
    at 0in 2in, 3in x 1in
page 1-2, 7-8
  blank
)"));
  CHECK(
      it.told("unsafe-words") ==
      R"(almanac.bodkin:28:5: error: 0.245in of the words' left side will not print on pages 4 and 6 [unsafe-words]
  at 0in 2in, 3in x 1in
  ~~~~~~~~~~~~~~~~~~~~~
  why   page 4 is the left half of sheet 2, back: its left edge is the sheet's edge, where copier
        leaves 1/4in bare; creep of 0.004in is made up for
  type  at       1/4in 2in, 3in x 1in
)");
}

TEST_CASE("a place that counts from the outer edge is told by its outer edge") {
  const Inspected it = inspected(booklet("pages 8", R"(running folios
  folio in label
    at 0.1in from outer, 0.1in from foot, 1in x 0.2in
page 1-8
  words "so" in body
)"));
  CHECK(
      it.told("unsafe-words") ==
      R"(almanac.bodkin:28:5: error: up to 0.144in of the folio's outer side will not print on pages 3, 4, 5 and 6 [unsafe-words]
  at 0.1in from outer, 0.1in from foot, 1in x 0.2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 4 is the left half of sheet 2, back: its left edge is the sheet's edge, where copier
        leaves 1/4in bare; creep of 0.004in is made up for; it is over as well by 0.064in at the
        bottom
  type  at       1/4in from outer, 3/16in from foot, 1in x 0.2in
)");
  CHECK(it.edited("unsafe-words")
            .find("    at       1/4in from outer, 3/16in from foot, 1in x 0.2in\n") !=
        std::string::npos);
}

TEST_CASE("turned matter is judged by its true outline") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  patch
    at 1in 1in, 4in x 0.2in
    fill black
    turn 20deg
  patch
    at 1in 3in, 4 1/2in x 0.2in
    fill black
    turn 20deg
page 1-2, 4
  blank
)"));
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:32:5: error: 0.149in of the patch's right side will not print on page 3 [unsafe-art]
  at 1in 3in, 4 1/2in x 0.2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: its right edge is the sheet's edge, where copier
        leaves 1/4in bare; its left edge is the fold, where it may go to the edge
  type  at       13/16in 3in, 4 1/2in x 0.2in
)");
  CHECK(it.found() == "unsafe-art 32");
}

TEST_CASE("a thing too large to be moved is made smaller") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  patch
    at 0in 1in, 5.45in x 1in
    fill black
page 1-2, 4
  blank
)"));
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:28:5: error: 0.2in of the patch's right side will not print on page 3 [unsafe-art]
  at 0in 1in, 5.45in x 1in
  ~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: its right edge is the sheet's edge, where copier
        leaves 1/4in bare; its left edge is the fold, where it may go to the edge
  type  at       0 1in, 5 1/4in x 1in      (smaller, as there is no room to move it)
)");
}

TEST_CASE("the ends of a rule are brought in") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  rule 1pt black, 1in 2in to 5.4in 2in
page 1-2, 4
  blank
)"));
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:27:3: error: 0.15in of the rule's right side will not print on page 3 [unsafe-art]
  rule 1pt black, 1in 2in to 5.4in 2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: its right edge is the sheet's edge, where copier
        leaves 1/4in bare; its left edge is the fold, where it may go to the edge
  type  rule 1pt black, 1in 2in to 5 1/4in 2in
)");
  CHECK(it.edited("unsafe-art").find("  rule 1pt black, 1in 2in to 5 1/4in 2in\n") !=
        std::string::npos);
}

TEST_CASE("words that fill narrow margins ask for wider ones") {
  const Inspected it = inspected(booklet("pages 4\nmargins 1/8in", R"(page 2
  words "I" in body
page 1, 3-4
  blank
)"));
  CHECK(
      it.told("unsafe-words") ==
      R"(almanac.bodkin:28:3: error: 0.122in of the words' outer side will not print on page 2 [unsafe-words]
  words "I" in body
  ~~~~~~~~~~~~~~~~~
  why   page 2 is the left half of sheet 1, back: its left edge is the sheet's edge, where copier
        leaves 1/4in bare; it is over as well by 0.095in at the top
  type  margins    inner 1/8in, outer 1/4in, head 1/4in, foot 1/8in      (under edition)
)");
}

TEST_CASE("past the edge of a page matter ends") {
  const Inspected it = inspected(booklet("pages 4", R"(page 1
  patch
    at -0.1in 1in, 2in x 1in
    fill black
page 3
  words "too far right" in sign
    at 4 1/2in 1in, 3in x 1in
page 2, 4
  blank
)"));
  CHECK(
      it.told("off-the-page") ==
      R"(almanac.bodkin:28:5: error: this patch passes the left edge of page 1 by 0.1in [off-the-page]
  at -0.1in 1in, 2in x 1in
  ~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 1 is the right half of sheet 1, front: past the fold lies another page; only a spread
        crosses it
  type  at       0 1in, 2in x 1in

almanac.bodkin:32:5: error: these words pass the right edge of page 3 by 0.902in [off-the-page]
  at 4 1/2in 1in, 3in x 1in
  ~~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: past its right edge the paper ends
  type  at       2in 1in, 3in x 1in
)");
  CHECK(it.edited("off-the-page").find("    at       0 1in, 2in x 1in\n") != std::string::npos);
}

TEST_CASE("a spread may cross the fold of one piece of paper") {
  const Inspected it = inspected(booklet("pages 4", R"(spread 2-3
  patch
    at 4in 1in, 3in x 1in
    fill black
page 1, 4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("white hides and needs no safe place") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  patch
    at 0in 1in, 2in x 1in
    fill white
page 1, 3-4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a picture fills a page only where the bare edge is cut off") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  picture "art/grey.png"
    fills page
    describe "a grey square"
page 1-2, 4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:28:5: error: this picture fills page 3 to the top edge, which will not print [unsafe-art]
  fills page
  ~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: its top edge is the sheet's edge, where copier
        leaves 1/4in bare; only an edge that is cut off by 1/4in or more can be printed to the end
  type  fills    live
)");
  CHECK(it.edited("unsafe-art").find("    fills    live\n") != std::string::npos);
}

TEST_CASE("an edge that is cut off by the bare width can be printed to the end") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  picture "art/grey.png"
    fills page
    describe "a grey square"
page 1-2, 4
  blank
finish
  fold all
  trim fore-edge 1/4in, head 1/4in, foot 1/4in
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(it.found() == "");
}

TEST_CASE("a metric edition is told in millimetres") {
  const Inspected it = inspected(metric_booklet("pages 4", R"(page 2
  picture "art/grey.png"
    at 2mm 10mm, 50mm x 50mm
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(
      it.told("unsafe-art") ==
      R"(almanac.bodkin:28:5: error: 2.5mm of the picture's left side will not print on page 2 [unsafe-art]
  at 2mm 10mm, 50mm x 50mm
  ~~~~~~~~~~~~~~~~~~~~~~~~
  why   page 2 is the left half of sheet 1, back: its left edge is the sheet's edge, where copier
        leaves 5mm bare; its right edge is the fold, where it may go to the edge
  type  at       4.5mm 10mm, 50mm x 50mm
)");
  CHECK(it.edited("unsafe-art").find("    at       4.5mm 10mm, 50mm x 50mm\n") !=
        std::string::npos);
}
