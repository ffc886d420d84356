// Pockets and leaves on their pages.
#include "sheet/glued_on.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

struct Made {
  tests::Read manuscript;
  Problems problems;
  std::vector<CopyPart> parts;
  explicit Made(const std::string &pieces)
      : manuscript(read(small_edition("", "\nface book from \"EB Garamond\"\nstyle body\n"
                                          "  face book 11\npage 1-8\n  words \"x\" in body\n" +
                                              pieces))) {
    parts = impose_parts(manuscript.edition(), *manuscript.sources, problems);
  }
  std::string told() const {
    std::string text = manuscript.found();
    for (const Problem &problem : problems)
      text += problem.check + ": " + problem.message + "\n";
    return text;
  }
};

std::string card(const std::string &facts) {
  return "insert card\n  size 3in x 2in\n  up 10\n" + facts + "  page 1\n    blank\n";
}

} // namespace

TEST_CASE("a leaf is tipped in at the spine, in the middle of the height, unless it says where") {
  const Made plain(card("  goes on 5\n"));
  CHECK(plain.told() == "");
  const std::vector<GluedOn> glued = glued_on(plain.parts);
  REQUIRE(glued.size() == 1);
  CHECK(glued[0].box == Box{{}, Length::inches(13, 4), Length::inches(3), Length::inches(2)});
  CHECK(glued[0].hides == Box{{}, Length::inches(13, 4), Length::inches(1, 4), Length::inches(2)});
  // On a left-hand page the spine is at the right.
  CHECK(glued_on(Made(card("  goes on 4\n")).parts)[0].hides.x == Length::inches(21, 4));
  CHECK(glued_on(Made(card("  goes on 5\n  at 1/2in from outer, 1in from foot\n")).parts)[0].box ==
        Box{Length::inches(2), Length::inches(11, 2), Length::inches(3), Length::inches(2)});
}

TEST_CASE("the underside of a leaf is hidden along its glue") {
  const Made made(card("  goes on 5\n  glued inner, 3/8in wide\n"));
  const Imposition &leaf = made.parts[1].imposition;
  CHECK(leaf.place_of(2).hidden.right == Length::inches(3, 8));
  CHECK(leaf.place_of(2).hidden.left == Length{});
  CHECK(leaf.place_of(1).hidden == Edges{});
}

TEST_CASE("a pocket is cut out with flaps at three edges, folded where its face ends") {
  const Made made("insert sleeve\n  size 4in x 3in\n  flaps 1/2in\n  goes on 7\n"
                  "  page 1\n    blank\n");
  CHECK(made.told() == "");
  const Sheet &sheet = made.parts[1].imposition.sheets.front();
  CHECK(sheet.cell == Size{Length::inches(5), Length::inches(7, 2)});
  CHECK(sheet.folds.size() == 3);
  const Place &face = sheet.sides[0].places.front();
  CHECK(face.top == Meets::sheet_edge); // open at the head
  CHECK(face.left == Meets::fold);
  CHECK(face.box.size() == Size{Length::inches(4), Length::inches(3)});
  CHECK(glued_on(made.parts)[0].hides ==
        Box{Length::inches(3, 4), Length::inches(11, 4), Length::inches(4), Length::inches(3)});
}

TEST_CASE("with a wrap, the cover's pages that a piece goes on are the wrap's") {
  const Made made("wrap on plain\n  page all\n    blank\n" + card("  goes on inside-back\n"));
  CHECK(made.told() == "");
  const std::vector<GluedOn> glued = glued_on(made.parts);
  CHECK(glued[0].page == 3);
  CHECK(glued[0].host == &made.parts[1]);
}

TEST_CASE("what passes the edge that the knife leaves sticks out") {
  const std::string knife = "finish\n  fold all\n  trim fore-edge 1/8in\n";
  CHECK(Made(card("  goes on 5\n  at 0in from outer, centred\n")).told() == "");
  CHECK(Made(card("  goes on 5\n  at 0in from outer, centred\n") + knife).told() ==
        "sticks-out: card sticks out 1/8in past the fore-edge of page 5\n");
  CHECK(Made(card("  goes on 4\n  at 1in from outer, 7in\n")).told() ==
        "sticks-out: card sticks out 1/2in past the foot of page 4\n");
}

TEST_CASE("a piece goes into a pocket that holds it, and nothing lies in itself") {
  const std::string sleeve = "insert sleeve\n  size 4in x 3in\n  flaps 1/2in\n  goes on 7\n"
                             "  page 1\n    blank\n";
  CHECK(Made(sleeve + card("  goes in sleeve\n")).told() == "");
  CHECK(Made(sleeve + "insert map\n  size 4 1/4in x 5 1/2in\n  up 4\n  goes in sleeve\n"
                      "  page 1\n    blank\n")
            .told() == "piece-too-large: map is quarter-letter folded, larger than the pocket "
                       "sleeve that it lies in\n");
  const auto found = [](const std::string &pieces) { return Made(pieces).manuscript.found(); };
  CHECK(found(card("  goes in card\n")).find("holds-itself") != std::string::npos);
  const std::string ring =
      found(card("  goes in other\n") + "insert other\n  size 3in x 2in\n  up 10\n  goes in card\n"
                                        "  page 1\n    blank\n");
  CHECK(ring.find("holds-itself") != ring.rfind("holds-itself"));
  CHECK(found(card("  goes loose\n") + "insert map\n  size 3in x 2in\n  up 10\n  goes in card\n"
                                       "  page 1\n    blank\n")
            .find("not-a-pocket") != std::string::npos);
}
