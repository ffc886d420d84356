// Belly bands and boards: as large as the copy makes them.
#include "edition/reading.hpp"
#include "sheet/parts.hpp"

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
      : manuscript(read(small_edition(
            "", "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\n"
                "stock long\n  weight 20 lb bond\n  caliper 0.0038in\n  sheet legal\n"
                "  costs included\nstock grey\n  weight 1200 gsm\n  caliper 0.08in\n"
                "  sheet 20in x 30in\n  costs included\npage 1-8\n  words \"x\" in body\n" +
                    pieces))) {
    parts = impose_parts(manuscript.edition(), *manuscript.sources, problems);
  }
  std::string told() const {
    std::string text;
    for (const Problem &problem : problems)
      text += problem.check + ": " + problem.message + "; " + problem.why + "\n";
    return text;
  }
};

const std::string band =
    "insert band\n  goes round\n  height 2in\n  paper long\n  page 1\n"
    "    words \"x\" in body\n      panel front\n      at 1in 1in, 1in x 1in\n";
const std::string knife = "finish\n  fold all\n  trim fore-edge 1/8in\n";

} // namespace

// Two sheets of 0.0038in folded once: four leaves, 0.0152in. 2 x 5 3/8 + 2 x 0.0152 + 3/4
// = 11.5304.
TEST_CASE("a band is twice the trimmed width, twice the thickness and the overlap long") {
  const Made made(band + knife);
  CHECK(made.told() == "");
  const CopyPart &part = made.parts[1];
  CHECK(part.edition->size->width == Length::inches(115304, 10000));
  const auto &panels = part.imposition.panels;
  REQUIRE(panels.size() == 5);
  CHECK(panels[0].panel == BandPanel::back);
  CHECK(panels[1].box.x == Length::inches(43, 8));
  CHECK(panels[2].panel == BandPanel::front);
  CHECK(panels[2].box.x == Length::inches(43, 8) + Length::inches(152, 10000));
  CHECK(panels[4].box.right() == part.edition->size->width);
  const Sheet &sheet = part.imposition.sheets.front();
  CHECK(sheet.folds.size() == 4);
  // In the middle of a legal sheet, 14in long.
  CHECK(sheet.sides[0].places.front().box.x ==
        (Length::inches(14) - part.edition->size->width) / 2);
  CHECK(sheet.folds.front().start.x == sheet.sides[0].places.front().box.x + Length::inches(43, 8));
}

TEST_CASE("what lies in the copy makes its band longer, a band does not") {
  const std::string card = "insert card\n  size half-letter\n  paper grey\n  up 4\n  count 2\n"
                           "  page 1\n    blank\n";
  CHECK(Made(band + card).parts[1].edition->size->width ==
        Length::inches(11) + Length::inches(152, 10000) * 2 + Length::inches(32, 100) +
            Length::inches(3, 4));
}

TEST_CASE("a band longer than its paper is told with its length") {
  CHECK(Made("insert band\n  goes round\n  height 2in\n  page 1\n    blank\n").told() ==
        "band-too-long: band is 11.78in long and 2in high, and letter (8 1/2in x 11in) has no room "
        "for it; round the trimmed copy it is 11.03in, and 3/4in of it are glued\n");
}

TEST_CASE("boards are the trimmed copy with its squares, two in a copy") {
  const Made made("boards on grey\n  squares 1/8in\n  up 4\n" + knife);
  CHECK(made.told() == "");
  CHECK(made.parts[1].edition->size->width == Length::inches(11, 2));
  CHECK(made.parts[1].edition->size->height == Length::inches(35, 4));
  CHECK(made.parts[1].in_a_copy() == 2);
}

TEST_CASE("facts that belong to another sort of piece are told") {
  const auto found = [](const std::string &piece) {
    return Made("insert one\n" + piece + "  page 1\n    blank\n").manuscript.found();
  };
  CHECK(found("  size 3in x 5in\n  up 4\n  height 2in\n").find("not-for-this-piece") !=
        std::string::npos);
  CHECK(found("  goes round\n  height 2in\n  size 3in x 5in\n").find("not-for-this-piece") !=
        std::string::npos);
  CHECK(found("  size 3in x 5in\n  up 4\n  flaps 1/2in\n").find("not-for-this-piece") !=
        std::string::npos);
  CHECK(found("  goes round\n").find("missing-fact") != std::string::npos);
  CHECK(found("  goes round\n  height 0in\n").find("error") != std::string::npos);
}

// The band lies along the sheet's long edge, so its folds run along the short one.
TEST_CASE(
    "a band's folds and a pocket's flaps are counted by the grain of the sheet they come from") {
  const auto along = [](const std::string &grain) {
    std::string manuscript = small_edition(
        "", "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\nstock long\n"
            "  weight 20 lb bond\n  caliper 0.0038in\n  sheet legal, grain " +
                grain + "\n  costs included\npage 1-8\n  words \"x\" in body\n" + band +
                "insert sleeve\n  size 4in x 3in\n  paper long\n  flaps 1/2in, open head\n"
                "  goes on 8\n  page 1\n    blank\n" +
                knife);
    const tests::Read made = read(manuscript);
    Problems problems;
    const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
    std::string text;
    for (const char *name : {"band", "sleeve"}) {
      for (const Sheet::FoldLine &fold : part_called(parts, name).imposition.sheets[0].folds)
        text += fold.along_grain ? '=' : 'x';
      text += ' ';
    }
    return text;
  };
  // Four folds of the band; of the pocket's flaps two run one way and one the other.
  const std::string long_grain = along("long"), short_grain = along("short");
  CHECK(long_grain.substr(0, 5) == "xxxx ");
  CHECK(short_grain.substr(0, 5) == "==== ");
  CHECK(long_grain != short_grain);
}
