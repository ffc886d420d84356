#include "sheet/papers.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;

namespace {

const Problem &only(const Problems &problems) {
  REQUIRE(problems.size() == 1);
  return problems[0];
}

} // namespace

TEST_CASE("one page that asks a paper speaks for its whole sheet") {
  Desk desk(8);
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.on(4, test::rose);
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].stock == test::board);
  CHECK(imposition.sheets[1].stock == test::rose);
  CHECK(desk.problems.empty());
}

TEST_CASE("the edition's paper fills in, and the cover never contradicts a page") {
  Desk desk(12);
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.on(12, test::rose);
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].stock == test::rose);
  CHECK(imposition.sheets[1].stock == test::cream);
  CHECK(desk.problems.empty());
}

TEST_CASE("saying the same paper twice for one sheet is fine") {
  Desk desk(8);
  desk.on(3, test::rose);
  desk.on(6, test::rose);
  CHECK(desk.impose().sheets[1].stock == test::rose);
  CHECK(desk.problems.empty());
}

TEST_CASE("two papers asked of one sheet are reported at the later line, in terms of paper") {
  Desk desk(20, "saddle-stitch", "page 3 on cream\npage 5 on rose\npage 6 on cream\n");
  desk.edition.paper.value = test::board;
  desk.on(3, test::cream, "page 3");
  desk.on(5, test::rose, "page 5");
  desk.on(6, test::cream, "page 6");
  Element words;
  words.what = Words{};
  desk.edition.elements.push_back(words);
  desk.edition.pages[6].elements.push_back(ElementId{0});
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[2].stock == test::rose);
  const Problem &problem = only(desk.problems);
  CHECK(problem.kind == Kind::error);
  CHECK(problem.check == "mixed-stock");
  CHECK(problem.range == desk.words("page 6", "cream"));
  CHECK(problem.message ==
        "page 6 is asked on cream, but page 5 (line 2) puts the same sheet on rose");
  CHECK(problem.why ==
        "sheet 3 of 5 is one piece of paper: pages 16 and 5 on its front, 6 and 15 on "
        "its back; cream pages near by are 3, 4, 17 and 18, on sheet 2");
  REQUIRE(problem.type.size() == 1);
  CHECK(problem.type[0].line == "page 6 on rose");
  CHECK(problem.type[0].remark == "or move its words to page 4");
  REQUIRE(problem.related.size() == 1);
  CHECK(problem.related[0].range == desk.words("page 5", "rose"));
  CHECK(problem.related[0].message == "page 5 is asked on rose here");
}

TEST_CASE("the line to type keeps what else the page's line says") {
  Desk desk(8, "saddle-stitch", "page 4 on rose\npage 5 called ticket in colour on board\n");
  desk.on(4, test::rose, "page 4");
  desk.on(5, test::board, "page 5");
  desk.impose();
  const Problem &problem = only(desk.problems);
  CHECK(problem.type[0].line == "page 5 called ticket in colour on rose");
  CHECK(problem.why == "sheet 2 of 2 is one piece of paper: pages 6 and 3 on its front, 4 and 5 on "
                       "its back; no other sheet is board");
}

TEST_CASE("a list of pages that reaches other sheets is not rewritten whole") {
  Desk desk(12, "saddle-stitch", "page 5 on rose\npage 4, 6 on cream\n");
  desk.on(5, test::rose, "page 5");
  desk.on(4, test::cream, "page 4, 6");
  desk.on(6, test::cream, "page 4, 6");
  desk.impose();
  const Problem &problem = only(desk.problems);
  CHECK(problem.type[0].line == "page 6 on rose");
  CHECK(problem.type[0].remark == "out of the list (line 2); or move what is on it to page 4");
}

TEST_CASE("a cover needs a sheet with the first two and the last two pages alone") {
  Desk desk(16, "section-8", "cover on board\n");
  desk.edition.cover_stock = Known<StockId>{test::board, desk.words("cover", "board")};
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].stock == test::cream);
  const Problem &problem = only(desk.problems);
  CHECK(problem.check == "no-cover");
  CHECK(problem.range == desk.words("cover", "board"));
  CHECK(problem.message == "section-8 has no sheet for a cover alone: sheet 1 carries 8 pages");
  CHECK(
      problem.why ==
      "sheet 1 of 2 is one piece of paper: pages 5, 4, 8 and 1 on its front, 3, 6, 2 and 7 on its "
      "back; a cover is a sheet with the first two and the last two pages and no others");
  CHECK(problem.type[0].line == "page 1 on board");
  CHECK(problem.type[0].remark == "which puts pages 1 to 8 on it; and take `cover` out");
}

TEST_CASE("gathered sheets of four pages have no cover either") {
  Desk desk(8);
  desk.edition.folding.value.gather.value = Gather::one_after_another;
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.impose();
  CHECK(only(desk.problems).message ==
        "saddle-stitch has no sheet for a cover alone: sheet 1 carries "
        "4 pages, and page 8 is on another");
}

TEST_CASE("a side goes through the machine that one of its pages asks") {
  Desk desk(8);
  Machine other = test::copier();
  other.name = "library-laser";
  desk.edition.machines.push_back(other);
  desk.by(8, MachineId{1});
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].sides[0].machine == MachineId{1});
  CHECK(imposition.sheets[0].sides[1].machine == MachineId{0});
  CHECK(desk.problems.empty());
}

TEST_CASE("two machines asked of one side are reported at the later line") {
  Desk desk(8, "saddle-stitch", "page 1 by library-laser\npage 8 by corner-copier\n");
  Machine other = test::copier();
  other.name = "library-laser";
  desk.edition.machines.push_back(other);
  desk.by(1, MachineId{1}, "page 1");
  desk.by(8, MachineId{0}, "page 8");
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].sides[0].machine == MachineId{1});
  const Problem &problem = only(desk.problems);
  CHECK(problem.check == "mixed-machine");
  CHECK(problem.range == desk.words("page 8", "corner-copier"));
  CHECK(problem.message ==
        "page 8 is asked by corner-copier, but page 1 (line 1) puts the same side "
        "through library-laser");
  CHECK(problem.why ==
        "pages 8 and 1 lie side by side on sheet 1, front, and a side goes through one "
        "machine; its front and its back may go through two");
  CHECK(problem.type[0].line == "page 8 by library-laser");
}
