#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("pale words are told once, for all their pages") {
  const Inspected it = inspected(booklet("pages 4", R"(style pale like body
  ink #bbbbbb
page 2-3
  words "mist" in pale
page 1, 4
  blank
)"));
  CHECK(
      it.told("hard-to-read") ==
      R"(almanac.bodkin:29:3: warning: all of these words on pages 2 and 3 are hard to read on what lies under them [hard-to-read]
  words "mist" in pale
  ~~~~~~~~~~~~~~~~~~~~
  why   they differ from the paper by less than 3 to 1 in brightness
  type  ink        black      (under style pale)
)");
  CHECK(it.edited("hard-to-read").find("  ink black\n") != std::string::npos);
}

TEST_CASE("black words on a dark patch are hard to read, white ones are not") {
  const Inspected it = inspected(booklet("pages 4", R"(style pale like body
  ink white
page 2
  patch
    at 1in 1in, 4in x 2in
    fill #333333
  words "black on dark" in body
    at 1in 1in, 4in x 0.5in
  words "white on dark" in pale
    at 1in 2in, 4in x 0.5in
page 1, 3-4
  blank
)"));
  CHECK(
      it.told("hard-to-read") ==
      R"(almanac.bodkin:32:3: warning: all of these words on page 2 are hard to read on what lies under them [hard-to-read]
  words "black on dark" in body
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   they differ from the ground by less than 3 to 1 in brightness
  type  fill     white      (under them, or a quieter place)
)");
  CHECK(it.found() == "hard-to-read 32");
}

TEST_CASE("words on a mid grey picture are told that it is a picture") {
  const Inspected it = inspected(booklet("pages 4", R"(style pale like body
  ink #999999
page 2
  picture "art/grey.png"
    at 1in 1in, 4in x 4in
    describe "a grey square"
  words "grey on grey" in pale
    at 1in 1in, 4in x 0.5in
page 1, 3-4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(
      it.told("hard-to-read") ==
      R"(almanac.bodkin:32:3: warning: all of these words on page 2 are hard to read on what lies under them [hard-to-read]
  words "grey on grey" in pale
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   they differ from the picture there by less than 3 to 1 in brightness
  type  fill     white      (under them, or a quieter place)
)");
}

TEST_CASE("words across words are told once, with a place below them") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2-3
  words "below" in body
    at 1in 1in, 3in x 0.3in
  words "above" in body
    at 1in 1in, 3in x 0.3in
page 1, 4
  blank
)"));
  CHECK(
      it.told("words-on-words") ==
      R"(almanac.bodkin:29:3: warning: these words lie on other words (line 27) on pages 2 and 3 [words-on-words]
  words "above" in body
  ~~~~~~~~~~~~~~~~~~~~~
  why   neither can be read where their letters cross
  type  at       1in 1 3/16in, 3in x 0.3in      (below them)
almanac.bodkin:27:3: note: the words below stand here
)");
  CHECK(it.edited("words-on-words").find("    at       1in 1 3/16in, 3in x 0.3in\n") !=
        std::string::npos);
}

TEST_CASE("places may overlap where the letters do not") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  words "above" in body
    at 1in 1in, 3in x 2in
  words "below" in body
    at 1in 1.2in, 3in x 2in
page 1, 3-4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a patch laid between hides the lower words on purpose") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  words "hidden" in body
    at 1in 1in, 3in x 0.3in
  patch
    at 1in 1in, 3in x 0.3in
    fill white
  words "seen" in body
    at 1in 1in, 3in x 0.3in
page 1, 3-4
  blank
)"));
  CHECK(it.found() == "");
}

TEST_CASE("white words on bare paper are not there, whatever the paper's colour") {
  for (const char *tint : {"white", "dark"}) {
    const std::string dark = std::string(tint) == "dark"
                                 ? "stock night like plain\n  tint #402030\n"
                                 : "stock night like plain\n";
    const Inspected it = inspected(booklet("pages 4", dark + R"(style pale like body
  ink white
page 2 on night
  words "snow" in pale
page 1, 3-4
  blank
)"));
    const std::string told = it.told("hard-to-read");
    CAPTURE(told);
    CHECK(told.find("white words show only on what is printed under them, and on bare\n        "
                    "paper they are not there\n") != std::string::npos);
    CHECK(told.find("type  ink        black      (under style pale)\n") != std::string::npos);
  }
}

TEST_CASE("black words on dark paper ask for another paper, not for black") {
  const Inspected it = inspected(booklet("pages 4", R"(stock night like plain
  tint #402030
page 2 on night
  words "coal" in body
page 1, 3-4
  blank
)"));
  CHECK(it.told("hard-to-read")
            .ends_with("type  ask for a paler paper there: nothing is darker than black\n"));
}

TEST_CASE("work by hand may run over an edge and not lie past it") {
  const auto told = [](const char *place) {
    return inspected(booklet("pages 4", std::string("page 2\n  hand stamp \"moon\"\n    at ") +
                                            place + "\npage 1, 3-4\n  blank\n"))
        .told("off-the-page");
  };
  CHECK(told("5in 1in, 1in x 1in").empty());
  CHECK(told("6in 1in, 1in x 1in").find("error: this hand lies past the edge of page 2") !=
        std::string::npos);
}
