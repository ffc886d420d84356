#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

namespace {

// With another size of page than half-letter.
std::string sized(std::string manuscript, std::string_view size) {
  const std::string_view usual = "size half-letter";
  return manuscript.replace(manuscript.find(usual), usual.size(), "size " + std::string(size));
}

std::string eight_pages(std::string_view finish) {
  return booklet("pages 8",
                 "page 1-8\n  words \"so\" in body\n    at 1in 1in, 3in x 1in\nfinish\n" +
                     std::string(finish));
}

} // namespace

TEST_CASE("sewing through the fold says through how many holes") {
  const Inspected it = inspected(eight_pages("  fold all\n  sew\n"));
  CHECK(
      it.told("sewing-holes") ==
      R"(almanac.bodkin:31:3: error: nothing says through how many holes this is sewn [sewing-holes]
  sew
  ~~~
  why   the thread goes through the fold at so many places, the outer ones some way from head and
        foot, so that they do not tear out; three or five are usual, an odd number brings both ends
        to the middle
  type  sew        3 holes, 1 1/16in from head and foot
)");
  CHECK(inspected(it.edited("sewing-holes")).found() == "");
}

TEST_CASE("a copy sewn through its side takes the holes of its folding, and no others") {
  const auto stab = [](std::string_view sew) {
    return sized(booklet("pages 4\nfolding stab-sewn",
                         "page 1-4\n  words \"so\" in body\n    at 1in 1in, 3in x 1in\nfinish\n  " +
                             std::string(sew) + "\n"),
                 "letter");
  };
  CHECK(inspected(stab("sew")).found() == "");
  CHECK(inspected(stab("sew 4 holes, 1/2in from head and foot")).found() == "");
  const std::string told =
      inspected(stab("sew 6 holes, 1/2in from head and foot")).told("sewing-holes");
  CHECK(told.find("error: 6 holes here, and the folding has 4 [sewing-holes]\n") !=
        std::string::npos);
  CHECK(told.find("  type  sew\n") != std::string::npos);
}

TEST_CASE("what folds to and fro has no fold to sew through") {
  const Inspected it =
      inspected(sized(booklet("pages 6\nfolding letter-fold",
                              "page 1-6\n  words \"so\" in body\n    at 1in 1in, 2in x 1in\n"
                              "finish\n  fold all\n  sew 3 holes, 1in from head and foot\n"),
                      "3 11/16in x 8 1/2in"));
  CHECK(it.told("sewing-holes").find("letter-fold has no fold that leaves hang in") !=
        std::string::npos);
}

TEST_CASE("staples and holes have room between head and foot") {
  const Inspected it =
      inspected(eight_pages("  fold all\n  staple 2, leg 1/4in, 5in from head and foot\n"));
  CHECK(
      it.told("off-the-copy") ==
      R"(almanac.bodkin:31:3: error: 5in from the head and 5in from the foot are more than the copy is high [off-the-copy]
  staple 2, leg 1/4in, 5in from head and foot
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   a copy is 8 1/2in high: the outermost two would pass each other in the middle
  type  staple     2, leg 1/4in, 2 1/8in from head and foot
)");
}

TEST_CASE("a hole lies between spine and fore-edge, a corner has half an edge") {
  CHECK(inspected(eight_pages("  fold all\n  punch 1 hole, 5 3/8in from spine\n")).found() == "");
  CHECK(inspected(eight_pages("  fold all\n  punch 1 hole, 5 7/16in from spine\n")).found() ==
        "off-the-copy 31");
  CHECK(inspected(eight_pages("  fold all\n  round 4 corners, radius 2 3/4in\n")).found() == "");
  CHECK(inspected(eight_pages("  fold all\n  round 4 corners, radius 2.76in\n")).found() ==
        "off-the-copy 31");
}

TEST_CASE("the knife's share of the height is gone when holes come after it") {
  const std::string trim = "  trim head 1/4in, foot 1/4in\n", punch = "  punch 2 holes, 1/2in from "
                                                                      "spine, 4.1in from head and "
                                                                      "foot\n";
  CHECK(inspected(eight_pages("  fold all\n" + punch + trim)).found() == "");
  CHECK(inspected(eight_pages("  fold all\n" + trim + punch)).found() == "off-the-copy 32");
}

TEST_CASE("a punch that goes through words says on which pages") {
  const Inspected it = inspected(booklet("pages 8", R"(page 2
  words "so that the rain" in sign
    at 3in 4in, 2.4in x 1in
page 3, 5
  words "so" in sign
    at 1/4in 4in, 3in x 1in
page 1, 4, 6-8
  words "so" in body
    at 2in 1in, 2in x 1in
finish
  fold all
  punch 1 hole, 1/2in from spine
)"));
  CHECK(
      it.told("hole-through-words") ==
      R"(almanac.bodkin:37:3: warning: the punch goes through words on pages 2, 3 and 5 [hole-through-words]
  punch 1 hole, 1/2in from spine
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   a hole takes 1/8in round its middle, and its middle is 1/2in from the spine on every page
  type  keep words clear of it with a wider inner margin, or punch nearer to the spine
almanac.bodkin:27:3: note: these words are hit
)");
}

TEST_CASE("needle, punch, corners and tie come in the order of hands") {
  CHECK(inspected(eight_pages("  cut sheets\n  glue tabs\n  cut slit\n  collate\n  crease all\n"
                              "  fold all\n  cut folds\n  punch 3 holes, 1/2in from spine\n"
                              "  sew 3 holes, 1in from head and foot\n  glue spine\n"
                              "  glue cover\n  trim fore-edge 1/8in\n"
                              "  round 2 corners, radius 1/4in\n  tie \"red thread\"\n"))
            .found() == "");
}

TEST_CASE("a step on another thing than the rule speaks of stands where it likes") {
  CHECK(inspected(eight_pages("  fold all\n  cut window \"a moon\"\n  glue other \"a wing\"\n"))
            .found() == "");
  CHECK(inspected(eight_pages("  fold all\n  glue tabs\n")).told("order-of-finish") ==
        R"(almanac.bodkin:31:3: error: glue tabs comes after fold (line 30) [order-of-finish]
  glue tabs
  ~~~~~~~~~
  why   sheets are glued end to end into one strip, which is folded then
  type  glue tabs      (on a line before `fold`)
almanac.bodkin:30:3: note: fold stands here
)");
}
