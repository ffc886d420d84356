// Wraps and inserts on their sheets, and several of a piece on one.
#include "sheet/parts.hpp"

#include "edition/reading.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <map>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

tests::Read with(const std::string &pieces, const std::string &facts = "") {
  return read(small_edition(facts, "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\n"
                                   "page 1-8\n  words \"x\" in body\n" +
                                       pieces));
}

} // namespace

TEST_CASE("sheets and pages of pieces are numbered on after the book's") {
  const tests::Read made = with("wrap on plain\n  page all\n    blank\n"
                                "insert map\n  size letter\n  goes centre\n  page 1\n    blank\n");
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
  CHECK(as_text(problems, *made.sources, false) == "");
  REQUIRE(parts.size() == 3);
  CHECK(parts[1].pages_before == 8);
  CHECK(parts[2].pages_before == 12);
  const Imposition whole = joined(parts);
  REQUIRE(whole.sheets.size() == 4);
  CHECK(whole.sheets[2].number == 3);
  CHECK(whole.sheets[2].piece == "wrap");
  CHECK(whole.sheets[3].piece == "map");
  CHECK(whole.page_count == 8);
  CHECK(whole.where.size() == 15);
  // N + 1 of the wrap's four, from page 9 on.
  CHECK(whole.sheets[2].sides[0].places[0].page + whole.sheets[2].sides[0].places[1].page ==
        5 + 2 * 8);
  CHECK(&part_of_page(parts, 8) == &parts[0]);
  CHECK(&part_of_page(parts, 9) == &parts[1]);
  CHECK(&part_of_page(parts, 14) == &parts[2]);
  CHECK(&part_of_sheet(parts, 1) == &parts[0]);
  CHECK(&part_of_sheet(parts, 2) == &parts[1]);
  CHECK(whole.size_of(13) == *parts[2].edition->size);
}

TEST_CASE("four quarters fill a letter sheet, and each edge counts as the sheet's edge") {
  const tests::Read made =
      with("insert slip\n  size quarter-letter\n  up 4\n  page 1\n    blank\n");
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
  CHECK(as_text(problems, *made.sources, false) == "");
  const Sheet &sheet = parts[1].imposition.sheets.front();
  CHECK(sheet.up == 4);
  CHECK(sheet.size == Size{Length::inches(17, 2), Length::inches(11)});
  REQUIRE(sheet.sides[0].places.size() == 4);
  REQUIRE(sheet.cuts.size() == 2);
  CHECK(sheet.cuts[0].start.y == Length::inches(11, 2));
  CHECK(sheet.cuts[1].start.x == Length::inches(17, 4));
  const Place &place = sheet.sides[0].places.front();
  for (const Length slack :
       {place.slack.left, place.slack.top, place.slack.right, place.slack.bottom})
    CHECK(slack == Length{});
  CHECK(place.right == Meets::sheet_edge);
}

TEST_CASE("two copies of the book lie on each tabloid sheet, folds and all") {
  std::string manuscript = small_edition("up 2", "\npage 1-8\n  blank\n");
  const std::string_view letter = "sheet letter";
  manuscript.replace(manuscript.find(letter), letter.size(), "sheet tabloid");
  const tests::Read made = read(manuscript);
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
  CHECK(as_text(problems, *made.sources, false) == "");
  REQUIRE(parts.front().imposition.sheets.size() == 2);
  const Sheet &sheet = parts.front().imposition.sheets.front();
  CHECK(sheet.size == Size{Length::inches(11), Length::inches(17)});
  CHECK(sheet.up == 2);
  REQUIRE(sheet.cuts.size() == 1);
  CHECK(sheet.cuts[0].start.y == Length::inches(17, 2));
  REQUIRE(sheet.folds.size() == 2);
  for (int copy = 0; copy < 2; ++copy) {
    const Sheet::FoldLine &fold = sheet.folds[static_cast<std::size_t>(copy)];
    CHECK(fold.start == Spot{Length::inches(11, 2), Length::inches(17, 2) * copy});
    CHECK(fold.end == Spot{Length::inches(11, 2), Length::inches(17, 2) * (copy + 1)});
    CHECK(fold.spine);
    CHECK(fold.along_grain); // upright on a sheet that stands upright, its grain along its length
  }
}

namespace {

std::string told_of_slip(const std::string &facts) {
  const tests::Read made = with("insert slip\n  " + facts + "\n  page 1\n    blank\n");
  Problems problems;
  impose_parts(made.edition(), *made.sources, problems);
  std::string text;
  for (const Problem &problem : problems)
    if (problem.check == "does-not-go-up")
      text += problem.message + "; " + problem.why + "; " + problem.type.front().line;
  return text;
}

} // namespace

TEST_CASE("more than the sheet holds is told by the sheet, however many are asked for") {
  CHECK(told_of_slip("size quarter-letter\n  up 101") ==
        "101 of slip do not go on a sheet of letter (8 1/2in x 11in); each takes 4 1/4in x 5 1/2in "
        "of "
        "paper before it is folded, so 4 have room in even rows; up         4");
  CHECK(told_of_slip("size quarter-letter\n  up 99999999999").find("99999999999 of slip do not") ==
        0);
}

// 17 columns of 1/2in by 22 rows.
TEST_CASE("what does fit is laid, beyond a hundred too") {
  const tests::Read made =
      with("insert slip\n  size 1/2in x 1/2in\n  up 374\n  page 1\n    blank\n");
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
  CHECK(as_text(problems, *made.sources, false) == "");
  CHECK(parts[1].imposition.sheets.front().sides[0].places.size() == 374);
}

TEST_CASE("specks are not laid by the ten thousand") {
  CHECK(told_of_slip("size 0.05in x 0.05in\n  up 37400") ==
        "37400 of slip do not go on a sheet of letter (8 1/2in x 11in); each takes 0.05in x 0.05in "
        "of "
        "paper before it is folded, so more than 2000 have room, which nobody cuts apart; "
        "up         2000");
}

// The front's pile of a cut stack must have its own back behind it: seen through the sheet, the
// back's place lies where the front's is, mirrored about the axis that the sheet turns about.
TEST_CASE("each slip cut out has page 2 behind its page 1") {
  const tests::Read made = with("insert slip\n  size 3in x 5in\n  up 4\n  page 1\n    blank\n");
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
  const Sheet &sheet = parts[1].imposition.sheets.front();
  std::map<std::pair<Length, Length>, int> behind;
  for (const Place &place : sheet.sides[1].places) {
    const Length x = sheet.turns_upright ? sheet.size.width - place.box.right() : place.box.x;
    const Length y = sheet.turns_upright ? place.box.y : sheet.size.height - place.box.foot();
    behind[{x, y}] = place.page;
  }
  REQUIRE(sheet.sides[0].places.size() == 4);
  for (const Place &place : sheet.sides[0].places) {
    CHECK(place.page == 1);
    CHECK(behind[{place.box.x, place.box.y}] == 2);
  }
}

TEST_CASE("what goes in after the knife is no larger than the trimmed copy") {
  const std::string slip = "insert slip\n  size half-letter\n  page 1\n    blank\n";
  const std::string knife = "finish\n  fold all\n  trim fore-edge 1/8in\n";
  const auto told = [](const std::string &pieces) {
    const tests::Read made = with(pieces);
    Problems problems;
    impose_parts(made.edition(), *made.sources, problems);
    std::string text;
    for (const Problem &problem : problems)
      if (problem.check == "piece-too-large")
        text += problem.message + "; " + problem.type.front().line;
    return text;
  };
  CHECK(told(slip) == "");
  CHECK(told(slip + knife) == "slip is half-letter folded, larger than the copy it goes into; "
                              "size       5 3/8in x 8 1/2in");
  CHECK(told("insert slip\n  size half-letter\n  goes centre\n  page 1\n    blank\n" + knife) ==
        "");
}

// The sum of the mean calipers of each two neighbours: 0.005 + (0.005 + 0.004) / 2 and so on.
TEST_CASE("a wrap pushes the nested sheets out as one more sheet round them would") {
  const auto creeps = [](const std::string &pieces) {
    const tests::Read made =
        with(pieces + "stock board\n  weight 65 lb cover\n  sheet letter, grain short\n"
                      "  caliper 0.010in\n  costs $10 per 250 sheets\n");
    Problems problems;
    const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
    std::string text;
    for (const Sheet &sheet : parts.front().imposition.sheets)
      text += written(sheet.creep, Ruler::inches) + " ";
    return text;
  };
  CHECK(creeps("") == "0 0.0038in ");
  CHECK(creeps("wrap on board\n  page all\n    blank\n") == "0.0069in 0.0107in ");
}

TEST_CASE(
    "the reverse of a one-sided folding is one page as large as the sheet, and no other has one") {
  const auto mini = [](const std::string &folding) {
    tests::Read made = read(small_edition("  folding " + folding + "\n",
                                          "\nface book from \"EB Garamond\"\nstyle body\n"
                                          "  face book 11\npage 1-8\n  blank\n"
                                          "reverse in black\n  words \"x\" in body\n"
                                          "    at 1in 1in, 4in x 1in\n"));
    Problems problems;
    const std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
    std::string told;
    for (const Problem &problem : problems)
      if (problem.check == "no-reverse")
        told = problem.message;
    return std::pair(joined(parts), told);
  };
  const auto [poster, nothing] = mini("eight-page-mini");
  CHECK(nothing == "");
  REQUIRE(poster.sheets.size() == 1);
  REQUIRE(poster.sheets[0].sides[1].places.size() == 1);
  CHECK(poster.sheets[0].reverse == 9);
  CHECK(poster.size_of(9) == Size{Length::inches(11), Length::inches(17, 2)});
  CHECK(mini("saddle-stitch").second ==
        "saddle-stitch prints both sides of its sheets, so none is left for a reverse");
}

// Eight leaves of 0.0038in: two of each of four sheets, or one of each of eight.
TEST_CASE("a wrap round a gathered book leaves room for its spine, a fold on either side") {
  const auto wrapped = [](const std::string &size) {
    const tests::Read made =
        read("edition \"Test\"\n  size " + size +
             "\n  run 10 copies\n  paper plain\n  machine copier\n  folding glued-spine\n"
             "stock plain\n  weight 20 lb bond\n  caliper 0.0038in\n  costs included\n"
             "stock board\n  weight 65 lb cover\n  sheet letter, grain short\n  costs included\n"
             "machine copier\n  prints black at $0.10 a side\n"
             "page 1-16\n  blank\nwrap on board\n  page all\n    blank\n");
    Problems problems;
    std::vector<CopyPart> parts = impose_parts(made.edition(), *made.sources, problems);
    std::string told;
    for (const Problem &problem : problems)
      told += problem.check + ": " + problem.message + "\n";
    return std::pair(std::move(parts), told);
  };
  const auto [parts, nothing] = wrapped("5in x 8in");
  CHECK(nothing == "");
  const Length spine = Length::inches(38, 10000) * 8;
  CHECK(parts[1].spine == spine);
  const Sheet &sheet = parts[1].imposition.sheets.front();
  REQUIRE(sheet.folds.size() == 2);
  CHECK(sheet.folds[1].start.x - sheet.folds[0].start.x == spine);
  const std::vector<Place> &front = sheet.sides[0].places;
  REQUIRE(front.size() == 2);
  CHECK(front[1].box.x - front[0].box.right() == spine);
  CHECK(front[0].slack.left == Length::inches(1, 2) - spine / 2);

  CHECK(wrapped("half-letter").second ==
        "wrap-too-narrow: a wrap round this spine is 11.03in wide, and board gives 11in\n");
}
