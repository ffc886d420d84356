// The foldings of the shelf against the classic forms, which nobody here made up.
#include "sheet/hanging.hpp"
#include "sheet/paper.hpp"
#include "sheet/refold.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;
using test::drawn;

namespace {

Imposition imposed(std::string_view folding, int pages) {
  Desk desk(pages, folding);
  Imposition imposition = desk.impose();
  CHECK(test::messages(desk.problems) == "");
  return imposition;
}

} // namespace

TEST_CASE("a single fold is one sheet with four pages") {
  const Imposition imposition = imposed("single-fold", 4);
  REQUIRE(imposition.sheets.size() == 1);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "4 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "2 3");
}

TEST_CASE("sheet k of a saddle stitch has N-2k+2 and 2k-1 in front, 2k and N-2k+1 behind") {
  // Derived by folding paper by hand.
  for (int n = 4; n <= 96; n += 4) {
    const Imposition imposition = imposed("saddle-stitch", n);
    REQUIRE(imposition.sheets.size() == static_cast<std::size_t>(n / 4));
    for (int k = 1; k <= n / 4; ++k) {
      const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(k - 1)];
      CHECK(drawn(sheet.sides[0]) ==
            std::to_string(n - 2 * k + 2) + " " + std::to_string(2 * k - 1));
      CHECK(drawn(sheet.sides[1]) == std::to_string(2 * k) + " " + std::to_string(n - 2 * k + 1));
    }
  }
}

TEST_CASE("pages side by side in a saddle stitch sum to N + 1") {
  const Imposition imposition = imposed("saddle-stitch", 20);
  for (const Sheet &sheet : imposition.sheets)
    for (const Side &side : sheet.sides)
      CHECK(side.places[0].page + side.places[1].page == 21);
}

TEST_CASE("a section of 8 has the classic outer form 5 4 over 8 1") {
  // Printing handbooks' scheme, from memory; the upper row stands head down.
  const Imposition imposition = imposed("section-8", 8);
  REQUIRE(imposition.sheets.size() == 1);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "5v 4v / 8 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "3v 6v / 2 7");
}

TEST_CASE("a section of 16 has the classic outer form 5 12 9 8 over 4 13 16 1") {
  // Printing handbooks' scheme, from memory; the upper rows stand head down.
  const Imposition imposition = imposed("section-16", 16);
  REQUIRE(imposition.sheets.size() == 1);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "5v 12v 9v 8v / 4 13 16 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "7v 10v 11v 6v / 2 15 14 3");
}

TEST_CASE("sections are gathered: the second starts where the first ends") {
  const Imposition imposition = imposed("section-16", 32);
  REQUIRE(imposition.sheets.size() == 2);
  CHECK(drawn(imposition.sheets[1].sides[0]) == "21v 28v 25v 24v / 20 29 32 17");
  CHECK(imposition.sheets[0].section == 1);
  CHECK(imposition.sheets[1].section == 2);
}

TEST_CASE("a section of 32 has a classic outer form of 4 by 4") {
  // Printing handbooks' scheme, from memory; heads meet between the first two rows and the last
  // two.
  const Imposition imposition = imposed("section-32", 32);
  REQUIRE(imposition.sheets.size() == 1);
  CHECK(drawn(imposition.sheets[0].sides[0]) ==
        "5v 28v 29v 4v / 12 21 20 13 / 9v 24v 17v 16v / 8 25 32 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) ==
        "3v 30v 27v 6v / 14 19 22 11 / 15v 18v 23v 10v / 2 31 26 7");
}

TEST_CASE("two sheets of eight pages nest") {
  // Derived by folding paper by hand: each side is a section of 8's with the inner 8 pages put in.
  const Imposition imposition = imposed("nested-eights", 16);
  REQUIRE(imposition.sheets.size() == 2);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "13v 4v / 16 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "3v 14v / 2 15");
  CHECK(drawn(imposition.sheets[1].sides[0]) == "9v 8v / 12 5");
}

TEST_CASE("sewn sections of four nested sheets follow each other") {
  const Imposition imposition = imposed("sewn-sections", 40);
  REQUIRE(imposition.sheets.size() == 10);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "16 1");
  CHECK(drawn(imposition.sheets[4].sides[0]) == "32 17");
  CHECK(drawn(imposition.sheets[7].sides[1]) == "24 25");
  CHECK(drawn(imposition.sheets[8].sides[0]) == "40 33"); // what is left is a smaller section
  CHECK(imposition.sheets[9].section == 3);
}

TEST_CASE("two books back to back hold half the pages each") {
  const Imposition imposition = imposed("back-to-back", 16);
  REQUIRE(imposition.sheets.size() == 4);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "8 1");
  CHECK(drawn(imposition.sheets[2].sides[0]) == "16 9");
  CHECK(imposition.sheets[1].section == 1);
  CHECK(imposition.sheets[2].section == 2);
}

TEST_CASE("a letter fold opens to 3 6 1 outside and 2 4 5 inside") {
  // Numbered by what each opening newly shows: derived by folding paper by hand.
  const Imposition imposition = imposed("letter-fold", 6);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "3 6 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "2 4 5");
  // The panel folded in first is 1/16in narrower, the others a third of that wider.
  const Length sixteenth = Length::inches(1, 16), third = (Length::inches(11) + sixteenth) / 3;
  CHECK(imposition.place_of(3).box.width == third - sixteenth);
  CHECK(imposition.place_of(1).box.width == third);
  CHECK(imposition.size_of(5).width == third - sixteenth);
}

TEST_CASE("a letter folded like a Z opens to 1 2 3 before and 4 5 6 behind") {
  const Imposition imposition = imposed("z-fold", 6);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "1 2 3");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "4 5 6");
}

TEST_CASE("a single gate opens to 2 6 1 outside and 3 4 5 inside, its flaps half as wide") {
  const Imposition imposition = imposed("single-gate", 6);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "2 6 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "3 4 5");
  // Quarters of 11in and two 32nds, the flaps a 32nd less.
  const Length quarter = (Length::inches(11) + Length::inches(1, 16)) / 4;
  CHECK(imposition.size_of(4).width == quarter * 2);
  CHECK(imposition.size_of(1).width == quarter - Length::inches(1, 32));
  CHECK(imposition.page_size.width == quarter * 2);
}

TEST_CASE("a double gate opens to 3 8 1 2 outside and 4 5 6 7 inside") {
  const Imposition imposition = imposed("double-gate", 8);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "3 8 1 2");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "4 5 6 7");
}

TEST_CASE("the mini from one sheet is 5 4 3 2 head down over 6 7 8 1, and nothing behind") {
  const Imposition imposition = imposed("eight-page-mini", 8);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "5v 4v 3v 2v / 6 7 8 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "");
  CHECK(imposition.one_side);
  CHECK(imposition.sheets[0].creep == Length());
  REQUIRE(imposition.sheets[0].slits.size() == 1);
  const Sheet::FoldLine &slit = imposition.sheets[0].slits[0];
  CHECK(slit.start == Spot{Length::inches(11, 4), Length::inches(17, 4)});
  CHECK(slit.end == Spot{Length::inches(33, 4), Length::inches(17, 4)});
}

TEST_CASE("the meander winds through sixteen pages, the back cover first") {
  // Derived by folding paper by hand.
  const Imposition imposition = imposed("sixteen-page-meander", 16);
  CHECK(drawn(imposition.sheets[0].sides[0]) ==
        "16 1 2 3 / 7v 6v 5v 4v / 8 9 10 11 / 15v 14v 13v 12v");
}

TEST_CASE("books of double leaves hang together, and mixed up they do not") {
  for (const auto &[name, pages] :
       {std::pair{"eight-page-mini", 8}, {"sixteen-page-meander", 16}, {"french-fold", 4}}) {
    Desk desk(pages, name);
    Imposition imposition = desk.impose();
    CHECK(test::hangs_together(imposition, *desk.edition.folding) == "");
    std::vector<Place> &places = imposition.sheets[0].sides[0].places;
    std::swap(places[0].page, places[places.size() - 1].page);
    CHECK(test::hangs_together(imposition, *desk.edition.folding) != "");
  }
}

TEST_CASE("a mini told on an upright sheet is wrapped about a spine that lies across") {
  Desk desk(8);
  desk.fold_as(test::written_folding("\nfolding own\n"
                                     "  sheet any, upright\n"
                                     "  sheets 1\n"
                                     "  sides 1\n"
                                     "  panels 2 by 4\n"
                                     "  cut between columns 1 and 2, rows 2 to 3\n"
                                     "  fold left under right\n"
                                     "  push ends together\n"));
  const Imposition imposition = desk.impose();
  // Derived by folding paper by hand: feet lie along the long fold.
  CHECK(drawn(imposition.sheets[0].sides[0]) == "5< 6> / 4< 7> / 3< 8> / 2< 1>");
}

TEST_CASE("an accordion runs over its sheets' fronts and comes back over their backs") {
  const Imposition imposition = imposed("accordion", 12);
  REQUIRE(imposition.sheets.size() == 2);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "1 2 3 4");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "9 10 11 12");
  CHECK(drawn(imposition.sheets[1].sides[0]) == "5 6 - -");
  CHECK(drawn(imposition.sheets[1].sides[1]) == "- - 7 8");
  // Half an inch of each sheet is its tab, hidden under the next sheet's first page, on its back.
  CHECK(imposition.place_of(1).box.width == Length::inches(21, 8));
  CHECK(imposition.place_of(8).hidden == Edges{{}, {}, Length::inches(1, 2), {}});
  CHECK(imposition.place_of(12).hidden == Edges{});
  CHECK(imposition.sheets[0].tabs.right == Length::inches(1, 2));
  // The tab stands between page 4 and the sheet's edge.
  CHECK(imposition.place_of(4).right == Meets::sheet_edge);
  CHECK(imposition.place_of(4).slack.right == Length::inches(1, 2));
  CHECK(imposition.place_of(5).left == Meets::sheet_edge);
}

TEST_CASE("an accordion read on one side takes any number of pages") {
  for (int pages = 2; pages <= 40; ++pages) {
    Desk desk(pages, "accordion-one-side");
    const Imposition imposition = desk.impose();
    CHECK(test::messages(desk.problems) == "");
    CHECK(imposition.sheets.size() == static_cast<std::size_t>((pages + 3) / 4));
  }
}

TEST_CASE("a French fold shows four of its panels and hides their backs") {
  const Imposition imposition = imposed("french-fold", 4);
  CHECK(drawn(imposition.sheets[0].sides[0]) == "3v 2v / 4 1");
  CHECK(drawn(imposition.sheets[0].sides[1]) == "");
}

TEST_CASE("double leaves are folded at the fore-edge and held at their open edges") {
  const Imposition imposition = imposed("double-leaves", 6);
  REQUIRE(imposition.sheets.size() == 3);
  CHECK(drawn(imposition.sheets[1].sides[0]) == "3 4");
  const Place &three = imposition.place_of(3);
  CHECK(three.spine == SpineAt::left);
  CHECK(three.right == Meets::fold);
}

TEST_CASE("single leaves are two pages a sheet, bound beside the edge") {
  for (const std::string_view name : {"side-stapled", "stab-sewn", "glued-spine"}) {
    const Imposition imposition = imposed(name, 6);
    REQUIRE(imposition.sheets.size() == 3);
    CHECK(drawn(imposition.sheets[1].sides[0]) == "3");
    CHECK(drawn(imposition.sheets[1].sides[1]) == "4");
    CHECK(imposition.place_of(3).spine == SpineAt::left);
    CHECK(imposition.place_of(3).left == Meets::sheet_edge);
    CHECK(imposition.place_of(4).spine == SpineAt::right);
    const Length held = name == "stab-sewn" ? Length::inches(3, 8) : Length();
    CHECK(imposition.place_of(3).hidden == Edges{held, {}, {}, {}});
    CHECK(imposition.place_of(4).hidden == Edges{{}, {}, held, {}});
  }
}

TEST_CASE("every folding of the shelf folds back into its book at many page counts") {
  const std::vector<std::string> names = test::shelf_foldings();
  CHECK(names.size() == 23);
  for (const std::string &name : names)
    for (int pages = 1; pages <= 100; ++pages) {
      CAPTURE(name);
      CAPTURE(pages);
      Desk desk(pages, name);
      const Imposition imposition = desk.impose();
      CHECK(imposition.page_count == pages);
      CHECK(imposition.folds_into >= pages);
    }
}

TEST_CASE("ten thousand pages are imposed") {
  for (const std::string_view name : {"saddle-stitch", "section-16"}) {
    Desk desk(10'000, name);
    const Imposition imposition = desk.impose();
    CHECK(imposition.folds_into == 10'000);
    CHECK(imposition.place_of(10'000).page == 10'000);
  }
}
