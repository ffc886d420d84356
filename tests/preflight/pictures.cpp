#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

TEST_CASE("too few samples for the size is told in samples, and what size they carry") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/small.png"
    at 1in 1in, 3in x 3in
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/small.png", grey_picture(150, 150)}});
  CHECK(
      it.told("coarse-picture") ==
      R"(almanac.bodkin:27:3: error: 50 samples an inch at this size; under 100 shows as squares [coarse-picture]
  picture "art/small.png"
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   150 pixels over 3in: it carries 0.5in at 300, 0.8in at 200
  type  at       1in 1in, 3/4in x 3/4in
        (or ask for the camera's own file, or make the coarseness the look)
)");
  CHECK(it.edited("coarse-picture").find("    at       1in 1in, 3/4in x 3/4in\n") !=
        std::string::npos);
}

TEST_CASE("between 100 and 200 samples an inch a picture looks soft") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2-3
  picture "art/small.png"
    at 1in 1in, 1in x 1in
    describe "a grey square"
page 1, 4
  blank
)"),
                                 {{"art/small.png", grey_picture(150, 150)}});
  CHECK(
      it.told("coarse-picture") ==
      R"(almanac.bodkin:27:3: warning: 150 samples an inch at this size; under 200 looks soft [coarse-picture]
  picture "art/small.png"
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   150 pixels over 1in: it carries 0.5in at 300, 0.8in at 200
  type  at       1in 1in, 3/4in x 3/4in
        (or ask for the camera's own file, or make the coarseness the look)
)");
}

TEST_CASE("two hundred samples an inch are enough") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/small.png"
    at 1in 1in, 3/4in x 3/4in
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/small.png", grey_picture(150, 150)}});
  CHECK(it.found() == "");
}

TEST_CASE("line art shows its steps under four hundred") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/red.png"
    at 1in 1in, 4in x 4in
    tone line at 50%
    describe "a square"
page 1, 3-4
  blank
)"),
                                 {{"art/red.png", red_picture(1200, 1200)}});
  CHECK(
      it.told("coarse-picture") ==
      R"(almanac.bodkin:27:3: warning: 300 samples an inch at this size; line art under 400 shows steps [coarse-picture]
  picture "art/red.png"
  ~~~~~~~~~~~~~~~~~~~~~
  why   1200 pixels over 4in: it carries 2.0in at 600, 3.0in at 400
  type  at       1in 1in, 3in x 3in
        (or ask for the camera's own file, or make the coarseness the look)
)");
}

TEST_CASE("a metric edition is told what its samples carry in millimetres") {
  const Inspected it = inspected(metric_booklet("pages 4", R"(page 2
  picture "art/small.png"
    at 20mm 20mm, 60mm x 60mm
    describe "a grey square"
page 1, 3-4
  blank
)"),
                                 {{"art/small.png", grey_picture(150, 150)}});
  CHECK(
      it.told("coarse-picture") ==
      R"(almanac.bodkin:27:3: error: 64 samples an inch at this size; under 100 shows as squares [coarse-picture]
  picture "art/small.png"
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   150 pixels over 60mm: it carries 13mm at 300, 19mm at 200
  type  at       20mm 20mm, 19mm x 19mm
        (or ask for the camera's own file, or make the coarseness the look)
)");
}

TEST_CASE("a file that is no picture is told what it is") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/bad.png"
    at 1in 1in, 3in x 3in
    describe "nothing"
page 1, 3-4
  blank
)"),
                                 {{"art/bad.png", "not a picture"}});
  CHECK(it.told("unreadable-picture") ==
        R"(almanac.bodkin:27:11: error: art/bad.png is a text, not a picture [unreadable-picture]
  picture "art/bad.png"
          ~~~~~~~~~~~~~
  why   the page is drawn with a dashed keyline so that you can see the rest
  type  save it again as PNG or JPEG from the program that made it, or name another picture
)");
}

TEST_CASE("a file that promises too many samples is told how many its place takes") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2-3
  picture "art/huge.png"
    at 1in 1in, 3in x 2 1/2in
    describe "a boast"
page 1, 4
  blank
)"),
                                 {{"art/huge.png", boastful_picture()}});
  CHECK(
      it.told("picture-too-big") ==
      R"(almanac.bodkin:27:11: error: art/huge.png promises 60000 x 60000 samples; 80 million in all, 100000 along an edge, are the most that are read [picture-too-big]
  picture "art/huge.png"
          ~~~~~~~~~~~~~~
  why   the page is drawn with a dashed keyline so that you can see the rest; 3in x 2 1/2in at 300
        an inch takes 900 x 750 pixels
  type  save a smaller copy of it, or name another picture
)");
}

TEST_CASE("a picture with no description is noted") {
  const Inspected it = inspected(booklet("pages 4", R"(page 2
  picture "art/grey.png"
    at 1in 1in, 3in x 3in
page 1, 3-4
  blank
)"),
                                 {{"art/grey.png", grey_picture(1700, 1700)}});
  CHECK(it.told("no-description") ==
        R"(almanac.bodkin:27:3: note: nothing says what this picture shows [no-description]
  picture "art/grey.png"
  ~~~~~~~~~~~~~~~~~~~~~~
  why   a reader who cannot see it has only your words
  type  describe "…"      (under it, in a sentence)
)");
}
