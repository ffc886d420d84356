// Page counts that do not fold and papers that do not give the page.
#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;

namespace {

Problem only(const Desk &desk) {
  REQUIRE(desk.problems.size() == 1);
  return desk.problems[0];
}

} // namespace

TEST_CASE("21 pages do not fold, and are laid out on six sheets all the same") {
  Desk desk(21, "saddle-stitch", "pages 21\n");
  desk.edition.page_count.from = desk.words("pages", "21");
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets.size() == 6);
  CHECK(imposition.folds_into == 24);
  CHECK(imposition.page_count == 21);
  CHECK(test::drawn(imposition.sheets[0].sides[0]) == "- 1");
  const Problem problem = only(desk);
  CHECK(problem.check == "does-not-fold");
  CHECK(problem.kind == Kind::error);
  CHECK(problem.range == desk.words("pages", "21"));
  CHECK(problem.message == "21 pages do not fold; this folding takes 20 or 24");
  CHECK(problem.why ==
        "a letter sheet folded once carries 4 pages: page 21 needs a sixth sheet and "
        "leaves 22, 23 and 24 blank");
  CHECK(problem.type[0].line == "pages      24");
  CHECK(problem.type[0].remark == "or take page 21 out: `pages      20`");
}

TEST_CASE("counts that do not fold, in the words of each") {
  struct Row {
    int pages;
    std::string_view folding, message, why, line, remark;
  };
  const Row rows[] = {
      {1, "saddle-stitch", "1 page does not fold; this folding takes 4",
       "a letter sheet folded once carries 4 pages: page 1 leaves 2, 3 and 4 blank", "pages      4",
       ""},
      {10, "saddle-stitch", "10 pages do not fold; this folding takes 8 or 12",
       "a letter sheet folded once carries 4 pages: pages 9 and 10 need a third sheet and leave 11 "
       "and "
       "12 blank",
       "pages      12", "or take pages 9 and 10 out: `pages      8`"},
      {15, "saddle-stitch", "15 pages do not fold; this folding takes 12 or 16",
       "a letter sheet folded once carries 4 pages: pages 13, 14 and 15 need a fourth sheet and "
       "leave "
       "16 blank",
       "pages      16", "or take pages 13, 14 and 15 out: `pages      12`"},
      {5, "single-fold", "5 pages do not fold; this folding takes 4",
       "a letter sheet folded once carries 4 pages: page 5 has no paper to stand on, since it "
       "takes 1 "
       "sheet",
       "pages      4", "and take page 5 out"},
  };
  for (const Row &row : rows) {
    CAPTURE(row.pages);
    Desk desk(row.pages, row.folding);
    desk.impose();
    const Problem problem = only(desk);
    CHECK(problem.message == row.message);
    CHECK(problem.why == row.why);
    CHECK(problem.type[0].line == row.line);
    CHECK(problem.type[0].remark == row.remark);
  }
}

TEST_CASE("a5 from letter is the wrong size") {
  Desk desk(8, "saddle-stitch", "size a5\n");
  desk.edition.size = {*paper_named("a5"), desk.words("size", "a5")};
  desk.impose();
  const Problem problem = only(desk);
  CHECK(problem.check == "wrong-size");
  CHECK(problem.range == desk.words("size", "a5"));
  CHECK(problem.message == "letter folded once gives 5 1/2in x 8 1/2in, not a5 (148mm x 210mm)");
  CHECK(problem.why == "a5 is half of a4; every stock here is cut letter");
  CHECK(problem.type[0].line == "size       half-letter");
  CHECK(problem.type[0].remark == "or buy a4");
}

TEST_CASE("a5 from a4 leaves less than a millimetre and is no problem") {
  // ISO 216: half of 297mm is rounded down to 148mm.
  Desk desk(8);
  desk.edition.size.value = *paper_named("a5");
  desk.edition.stocks[0].sheet->value = *paper_named("a4");
  const Imposition imposition = desk.impose();
  CHECK(desk.problems.empty());
  const Place &eight = imposition.place_of(8), &one = imposition.place_of(1);
  CHECK(eight.box.right() == one.box.x);
  CHECK(one.slack == Edges{{}, {}, Length::mm(1) / 2, {}});
  CHECK(eight.slack == Edges{Length::mm(1) / 2, {}, {}, {}});
}

TEST_CASE("only the sheets of another size are the wrong size") {
  Desk desk(8);
  desk.edition.stocks[1].sheet->value = *paper_named("legal");
  desk.on(3, test::rose);
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[1].size == Size{Length::inches(14), Length::inches(17, 2)});
  const Problem problem = only(desk);
  CHECK(problem.message ==
        "legal folded once gives 7in x 8 1/2in, not half-letter (5 1/2in x 8 1/2in)");
  CHECK(problem.why == "half-letter is half of letter; rose, the paper of sheet 2, is cut legal");
}

TEST_CASE("a folding for one size of sheet takes no other") {
  Desk desk(4);
  desk.edition.folding.value.sheet = Known<Size>{*paper_named("tabloid"), {}};
  desk.impose();
  const Problem problem = only(desk);
  CHECK(problem.message == "cream is cut letter, and saddle-stitch folds tabloid sheets");
  CHECK(problem.type[0].line == "sheet      tabloid");
}

TEST_CASE("a page smaller than its place lies against the spine, half its slack at head and foot") {
  Desk desk(4);
  desk.edition.size.value = {Length::inches(5), Length::inches(8)};
  const Imposition imposition = desk.impose();
  CHECK(imposition.place_of(1).box ==
        Box{Length::inches(11, 2), Length::inches(1, 4), Length::inches(5), Length::inches(8)});
  CHECK(imposition.place_of(2).box ==
        Box{Length::inches(1, 2), Length::inches(1, 4), Length::inches(5), Length::inches(8)});
  CHECK(imposition.place_of(2).slack ==
        Edges{Length::inches(1, 2), Length::inches(1, 4), {}, Length::inches(1, 4)});
}

TEST_CASE("a folding that cannot be still gives every page a place") {
  Desk desk(8);
  desk.edition.folding.value.columns = 3;
  Problems problems;
  const Imposition imposition = bodkin::impose(desk.edition, desk.sources, problems);
  CHECK(imposition.sheets.size() == 2);
  for (int page = 1; page <= 8; ++page)
    CHECK(imposition.place_of(page).page == page);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].check == "folding-cannot-be");
}

TEST_CASE("folds know whether they run along the grain") {
  Desk desk(8);
  desk.on(3, test::rose);
  const Imposition imposition = desk.impose();
  REQUIRE(imposition.sheets[0].folds.size() == 1);
  const Sheet::FoldLine &spine = imposition.sheets[0].folds[0];
  CHECK(spine.start == Spot{Length::inches(11, 2), {}});
  CHECK(spine.end == Spot{Length::inches(11, 2), Length::inches(17, 2)});
  CHECK(spine.spine);
  CHECK(spine.along_grain); // fibres along the short edge, which lies upright
  CHECK_FALSE(imposition.sheets[1].folds[0].along_grain);
}
