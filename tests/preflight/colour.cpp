#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("a coloured picture on black pages is told once, with what colour would cost") {
  const Inspected it = inspected(booklet("pages 8", R"(page 2-3 on plain
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
page 1, 4-8
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(
      it.told("colour-on-black") ==
      R"(almanac.bodkin:27:3: note: this picture is coloured and pages 2 and 3 are printed in black, so it comes out grey [colour-on-black]
  picture "art/red.png"
  ~~~~~~~~~~~~~~~~~~~~~
  why   in colour, each of its 2 sides would cost $0.50 instead of $0.10 a copy
  type  page 2-3 in colour on plain      (or `tone grey` under it, if grey is meant)
)");
  CHECK(it.edited("colour-on-black").find("page 2-3 in colour on plain\n") != std::string::npos);
}

TEST_CASE("where the side is paid as colour already, colour costs nothing more") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
page 3 in colour
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
page 1, 4
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(
      it.told("colour-on-black") ==
      R"(almanac.bodkin:27:3: note: this picture is coloured and page 2 is printed in black, so it comes out grey [colour-on-black]
  picture "art/red.png"
  ~~~~~~~~~~~~~~~~~~~~~
  why   its side is paid as colour already: in colour it would cost nothing more
  type  page 2 in colour      (or `tone grey` under it, if grey is meant)
)");
}

TEST_CASE("grey that is meant is no surprise") {
  const Inspected it = inspected(
      booklet("pages 4", R"(page 2
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    tone grey
    describe "a red square"
  picture "art/grey.png"
    at 1in 4in, 3in x 3in
    describe "a grey square"
page 1, 3-4
  blank
)"),
      {{"art/grey.png", grey_picture(1700, 1700)}, {"art/red.png", red_picture(1200, 1200)}});
  CHECK(it.found() == "");
}

TEST_CASE("a colour side that shows no colour is told once, with what it costs the run") {
  const Inspected it = inspected(booklet("pages 8", R"(page 4-5 in colour
  words "all black" in body
page 1-3, 6-8
  blank
)"));
  CHECK(
      it.told("colour-unused") ==
      R"(almanac.bodkin:26:13: warning: nothing on page 4 is coloured, nor on page 5 beside it, yet their side is paid as colour [colour-unused]
  page 4-5 in colour
              ~~~~~~
  why   sheet 2, back costs $0.50 instead of $0.10: $4.00 over 10 copies
  type  page 4-5
)");
  CHECK(it.edited("colour-unused").find("page 4-5\n") != std::string::npos);
}

TEST_CASE("all lines that ask for the colour of a side are to be typed") {
  const Inspected it = inspected(booklet("pages 8\ncover on plain in colour", R"(page 1, 8
  blank
page 2 called inside on plain
  words "all black" in body
page 7
  words "all black" in body
page 3-6
  blank
)"));
  CHECK(it.told("colour-unused")
            .find("  type  page 2 called inside in black on plain\n"
                  "        page 7 in black      (these 2 lines)\n") != std::string::npos);
  CHECK(it.edited("colour-unused").find("page 2 called inside in black on plain\n") !=
        std::string::npos);
  CHECK(it.edited("colour-unused").find("page 7 in black\n") != std::string::npos);
}

TEST_CASE("a page whose line opens a coloured one too needs a line of its own") {
  const Inspected it = inspected(booklet("pages 8", R"(spread 2-3 in colour
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
  words "all black" in body
    at 6in 1in, 3in x 3in
page 1, 4-8
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(it.told("colour-unused")
            .find("  type  page 2 is coloured, and the same line opens it: "
                  "give page 3 a line of its own, in black\n") != std::string::npos);
}

TEST_CASE("one coloured thing is reason enough for its side") {
  const Inspected it = inspected(booklet("pages 8", R"(page 4 in colour
  words "all black" in body
page 5 in colour
  picture "art/red.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
page 1-3, 6-8
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(it.found() == "");
}

TEST_CASE("of a side with a picture that cannot be read nobody can say that nothing is coloured") {
  const Inspected it = inspected(booklet("pages 8", R"(page 4-5 in colour
  words "all black" in body
  picture "art/gone.png"
    at 1in 1in, 3in x 3in
    describe "a red square"
page 1-3, 6-8
  blank
)"),
                                 {{"art/gone.png", "no picture"}});
  CHECK(it.told("colour-unused") == "");
  CHECK(it.told("unreadable-picture").find("art/gone.png") != std::string::npos);
}

TEST_CASE("where colour is the rule, black is written") {
  const Inspected it = inspected(booklet("pages 8\nprinting colour", R"(page 4-5
  words "all black" in body
page 1-3, 6-8
  blank
)"));
  CHECK(
      it.told("colour-unused") ==
      R"(almanac.bodkin:7:12: warning: nothing on page 4 is coloured, nor on page 5 beside it, yet their side is paid as colour [colour-unused]
  printing colour
           ~~~~~~
  why   sheet 2, back costs $0.50 instead of $0.10: $4.00 over 10 copies
  type  page 4-5 in black
)");
  CHECK(it.edited("colour-unused").find("page 4-5 in black\n") != std::string::npos);
}
