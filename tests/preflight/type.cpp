#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("type under five points fills in, and is told by its style") {
  const Inspected it = inspected(booklet("pages 4", R"(style tiny
  face book 4/5
page 2-3
  words "mind the gap" in tiny
page 1, 4
  blank
)"));
  CHECK(
      it.told("small-type") ==
      R"(almanac.bodkin:27:13: warning: type of 4 points; under 5 a copier fills the letters in [small-type]
  face book 4/5
            ~~~
  why   an x is about 0.6mm high at this size; toner spreads, and the eyes of e and a close
  type  face       book 5/6      (under style tiny)
)");
  CHECK(it.edited("small-type").find("  face book 5/6\n") != std::string::npos);
}

TEST_CASE("small headings are told by the style that sets them") {
  const Inspected it = inspected(booklet("pages 4", R"(style whisper
  face book 4
style page-style like body
  heading 1 in whisper
page 2
  words in page-style
    says
      # small

      large
page 1, 3-4
  blank
)"));
  CHECK(
      it.told("small-type") ==
      R"(almanac.bodkin:27:13: warning: type of 4 points; under 5 a copier fills the letters in [small-type]
  face book 4
            ~
  why   an x is about 0.6mm high at this size; toner spreads, and the eyes of e and a close
  type  face       book 5/6      (under style whisper)
)");
}

TEST_CASE("five points are small enough") {
  const Inspected it = inspected(booklet("pages 4", R"(style tiny
  face book 5
page 2
  words "mind the gap" in tiny
  rule 1/4pt black, 1in 7in to 4in 7in
page 1, 3-4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a thin rule is told in dots of the machine") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2-3
  rule 0.1pt black, 1in 7in to 4in 7in
  patch
    at 1in 1in, 1in x 1in
    outline 0.2pt black
page 1, 4
  blank
)"));
  CHECK(it.told("thin-line") ==
        R"(almanac.bodkin:27:3: warning: a line of 0.1 points; under 1/4 it breaks up [thin-line]
  rule 0.1pt black, 1in 7in to 4in 7in
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   it is 0.8 dots wide at the 600 dpi of copier; 1/4pt is 2.1
  type  rule 1/4pt black, 1in 7in to 4in 7in

almanac.bodkin:30:5: warning: a line of 0.2 points; under 1/4 it breaks up [thin-line]
  outline 0.2pt black
  ~~~~~~~~~~~~~~~~~~~
  why   it is 1.7 dots wide at the 600 dpi of copier; 1/4pt is 2.1
  type  outline 1/4pt black
)");
  CHECK(it.edited("thin-line").find("  rule 1/4pt black, 1in 7in to 4in 7in\n") !=
        std::string::npos);
}
