// The foldings of the shelf against the classic forms, which nobody here made up.
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

TEST_CASE("every folding of the shelf folds back into its book at many page counts") {
  for (const std::string_view name : {"single-fold", "saddle-stitch", "section-8", "section-16"})
    for (int pages = 1; pages <= 100; ++pages) {
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
