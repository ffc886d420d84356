#include "page/composing.hpp"
#include "page/outline.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

// A half-letter page is 396 by 612 points.
std::string patch(std::string_view place) {
  return "  patch\n    fill black\n    " + std::string(place) + "\n";
}

} // namespace

TEST_CASE("places are counted from the page's top left, and from outer or inner as the page lies") {
  const auto pages =
      composed("pages 4", "page 2-3\n" + patch("at 1in 2in, 3in x 1/2in") +
                              patch("at 1/2in from outer, 1/4in from foot, 1in x 1in") +
                              patch("at 1/2in from inner, centred, 1in x 1in") +
                              patch("at centred, 0in, 2in x 1in"));
  CHECK(pages->places(2) == "72 144 216x36; 36 522 72x72; 288 270 72x72; 126 0 144x72");
  CHECK(pages->places(3) == "72 144 216x36; 288 522 72x72; 36 270 72x72; 126 0 144x72");
}

// 396 − 72 = 324 across, 612 − 72 = 540 down; 4 columns with gaps of 12 are 72 wide, 6 rows 80
// high.
TEST_CASE("cells are places by columns and rows of the grid inside the margins") {
  const auto pages = composed("pages 4\nmargins 1/2in\ngrid 4 by 6, gap 12pt",
                              "page 1\n" + patch("cells 1 by 1") + patch("cells 2-3 by 6") +
                                  patch("cells 1-4 by 1-6"));
  CHECK(pages->places(1) == "36 36 72x80; 120 496 156x80; 36 36 324x540");
}

TEST_CASE("margins lie with the spine, and fills takes the area that it names") {
  const auto pages =
      composed("pages 4\nmargins inner 1in, outer 1/2in, head 3/4in, foot 1/4in",
               "page 2-3\n" + patch("fills margins") + patch("fills page") + patch("fills live"));
  // The copier leaves 18 points bare at the sheet's edges; the fold takes nothing.
  CHECK(pages->places(2) == "36 54 288x540; 0 0 396x612; 18 18 378x576");
  CHECK(pages->places(3) == "72 54 288x540; 0 0 396x612; 0 18 378x576");
}

TEST_CASE("running matter lies under everything, and not on blank, unnamed or cover pages") {
  const auto pages =
      composed("pages 8", "running line\n" + patch("at 1/4in from outer, 1in, 1/2in x 1/2in") +
                              "page 1\n" + patch("at 0in 0in, 1in x 1in") + "page 3-4\n" +
                              patch("at 0in 0in, 1in x 1in") + "page 5\n  blank\n");
  CHECK(pages->places(1) == "0 0 72x72");
  CHECK(pages->places(3) == "342 72 36x36; 0 0 72x72");
  CHECK(pages->places(4) == "18 72 36x36; 0 0 72x72");
  CHECK(pages->places(5).empty());
  CHECK(pages->places(6).empty());
  CHECK(pages->drawings[3].items[0].running);
}

TEST_CASE("a spread is one area, and what crosses its fold stands on both pages") {
  const auto pages =
      composed("pages 4", "spread 2-3\n" + patch("at 5in 1in, 1in x 1in") +
                              patch("at 0in 3in, 2in x 1in") + patch("at 7in 5in, 2in x 1in"));
  // 5in and 1in pass the fold at 396 points by 36.
  CHECK(pages->places(2) == "360 72 72x72; 0 216 144x72");
  const auto left = [&](int page, std::size_t item) {
    return extent_of(pages->drawings[page].items[item])->left;
  };
  CHECK(pages->drawings[3].items.size() == 2);
  CHECK(left(2, 0) == doctest::Approx(360));
  CHECK(left(3, 0) == doctest::Approx(360 - 396));
  CHECK(left(3, 1) == doctest::Approx(504 - 396));
  CHECK(pages->drawings[2].items[0].crosses_fold);
  CHECK_FALSE(pages->drawings[2].items[1].crosses_fold);
}

// A double gate of letter: 11in is two flaps and two panels a sixteenth wider, so that the flaps
// are (11in - 1/8in) / 4 = 195.75 points wide, and the fold of pages 4 and 5 lies there.
TEST_CASE("a spread's fold lies where its left page ends, however narrow that is") {
  const auto pages = composed("size 2.78125in x 8 1/2in\nfolding double-gate\npages 8",
                              "spread 4-5\n" + patch("at 2in 1in, 2in x 1in"));
  const auto right = extent_of(pages->drawings[5].items[0]);
  REQUIRE(right);
  CHECK(right->left == doctest::Approx(144 - 195.75));
}

// A square of 72 turned by 45 degrees is 72 × √2 = 101.82 across.
TEST_CASE("matter is turned about the middle of its place") {
  const auto pages =
      composed("pages 4", "page 1\n" + patch("at 1in 1in, 1in x 1in\n    turn 45deg"));
  const auto extent = extent_of(pages->drawings[1].items[0]);
  REQUIRE(extent);
  CHECK(extent->left == doctest::Approx(108 - 50.9117));
  CHECK(extent->right == doctest::Approx(108 + 50.9117));
  CHECK(extent->top == doctest::Approx(108 - 50.9117));
}

TEST_CASE("laid matter stands where it is laid") {
  const auto pages = composed("pages 4", "standing mark\n" + patch("at 0in 0in, 1in x 1/2in") +
                                             "page 1\n  lay mark at 2in 3in\n");
  const auto extent = extent_of(pages->drawings[1].items[0]);
  REQUIRE(extent);
  CHECK(extent->left == doctest::Approx(144));
  CHECK(extent->top == doctest::Approx(216));
  CHECK(extent->right == doctest::Approx(216));
  CHECK(extent->foot == doctest::Approx(252));
}

TEST_CASE("a code of too many words is an error, once for all its pages") {
  const auto pages = composed("pages 4", "page 1-2\n  qr \"" + std::string(2332, 'a') +
                                             "\"\n    at 1in 1in, 2in x 2in\n");
  const Problem *problem = nullptr;
  for (const Problem &one : pages->problems)
    if (one.check == "too-long-code")
      problem = &one;
  REQUIRE(problem);
  CHECK(problem->message == "2332 bytes are more than a code holds; 2331 are the most");
}

TEST_CASE("a page of a paste-up alone is printed in black, one of hand matter alone is not") {
  const auto pages =
      composed("pages 4", "page 1\n  paste-up \"ticket stub\"\n    at 1in 2in, 2in x 1in\n"
                          "page 2\n  hand stamp \"moon\"\n    at 1in 2in, 2in x 1in\n");
  CHECK(pages->drawings[1].draws);
  CHECK_FALSE(pages->drawings[1].coloured);
  CHECK_FALSE(pages->drawings[2].draws);
  const auto extent = extent_of(pages->drawings[1].items[0]);
  REQUIRE(extent);
  CHECK(extent->left == doctest::Approx(72));
  CHECK(extent->foot == doctest::Approx(216));
}
