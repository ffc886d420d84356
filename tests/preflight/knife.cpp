#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("words near the cut are told how near, and why that is a risk") {
  const Inspected it = inspected(booklet("pages 8\nmargins 1/2in", R"(page 3-6
  words "x" in label
    at 1in 7.95in, 1in x 0.2in
page 1-2, 7-8
  blank
finish
  fold all
  trim foot 3/8in
)"));
  CHECK(
      it.told("near-the-knife") ==
      R"(almanac.bodkin:29:5: warning: the words on pages 3, 4, 5 and 6 end 0.082in from the cut foot; the margins (line 7) say 1/2in [near-the-knife]
  at 1in 7.95in, 1in x 0.2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   the knife takes 3/8in off there; a knife set by hand wanders by 1/16in
  type  at       1in 7 7/8in, 1in x 0.2in
)");
}

TEST_CASE("a folio near the fore-edge moves in from the outer edge") {
  const Inspected it = inspected(booklet("pages 8\nmargins 1/2in", R"(running folios
  folio in label
    at 0.36in from outer, 1in from foot, 1in x 0.2in
page 1-8
  words "so" in body
finish
  fold all
  trim fore-edge 1/4in
)"));
  CHECK(
      it.told("near-the-knife") ==
      R"(almanac.bodkin:29:5: warning: the folio on pages 3, 4, 5 and 6 ends 0.112in from the cut fore-edge; the margins (line 7) say 1/2in [near-the-knife]
  at 0.36in from outer, 1in from foot, 1in x 0.2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   the knife takes 1/4in off there; creep (0.004in on sheet 2) is made up for; a knife set by
        hand wanders by 1/16in
  type  at       3/8in from outer, 1in from foot, 1in x 0.2in
)");
}

TEST_CASE("creep that is not made up for brings the knife nearer on the inner sheet") {
  const Inspected it =
      inspected(booklet("pages 8\nmargins 1/2in\ncreep 1/16in, not made up for", R"(page 1, 3
  words "so" in label
    at 0.38in from outer, 1in, 1in x 0.2in
page 2, 4-8
  blank
finish
  fold all
  trim fore-edge 1/4in
)"));
  CHECK(
      it.told("near-the-knife") ==
      R"(almanac.bodkin:30:5: warning: the words on page 3 end 0.071in from the cut fore-edge; the margins (line 7) say 1/2in [near-the-knife]
  at 0.38in from outer, 1in, 1in x 0.2in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   the knife takes 1/4in off there; creep takes 1/16in more on sheet 2, where it is not made up
        for; a knife set by hand wanders by 1/16in
  type  at       7/16in from outer, 1in, 1in x 0.2in
)");
}

TEST_CASE("words at the margins may be near the knife") {
  const Inspected it = inspected(booklet("pages 4\nmargins 5/16in", R"(page 3
  words "x" in label
    at 5/16in 5/16in, 3in x 0.2in
page 1-2, 4
  blank
finish
  fold all
  trim head 1/4in
)"));
  CHECK(it.found() == "");
}

TEST_CASE("pictures may be cut close, words may not") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  patch
    at 1in 0.32in, 1in x 1in
    fill black
page 1-2, 4
  blank
finish
  fold all
  trim head 1/4in
)"));
  CHECK(it.found() == "");
}

TEST_CASE("what the knife takes may be cut off") {
  const Inspected it = inspected(booklet("pages 4", R"(page 3
  words "MMMM" in sign
    at 1in 0.2in, 4in x 1in
page 1-2, 4
  blank
finish
  fold all
  trim head 3/8in
)"));
  CHECK(
      it.told("unsafe-words") ==
      R"(almanac.bodkin:28:5: error: 0.187in of the words' top side may be cut off on page 3 [unsafe-words]
  at 1in 0.2in, 4in x 1in
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   page 3 is the right half of sheet 1, back: its top edge is the sheet's edge, where copier
        leaves 1/4in bare; the knife takes 3/8in, and backs drift by 1/16in
  type  at       1in 1/2in, 4in x 1in
)");
}
