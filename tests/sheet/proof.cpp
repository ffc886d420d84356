// What the compiler proves of a folding, and what it says when the proof fails.
#include "measure/limits.hpp"
#include "sheet/crossing.hpp"
#include "sheet/fold.hpp"
#include "sheet/paper.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <numeric>

using namespace bodkin;
using test::Desk;

namespace {

// A sheet folded down to one panel in every order of layers, each in turn; how many of them paper
// can lie in.
int ways_to_fold(int columns, int rows) {
  Folding folding;
  folding.columns = columns;
  folding.rows = rows;
  FoldedPaper paper = flat_paper(folding);
  for (std::size_t cell = 0; cell < paper.cells.size(); ++cell)
    paper.cells[cell] = {0, 0, static_cast<int>(cell) % columns % 2 == 1,
                         static_cast<int>(cell) / columns % 2 == 1};
  for (Joint &joint : paper.joints)
    joint.step = 0;
  paper.width = paper.height = 1;
  CellPile pile(paper.cells.size());
  std::iota(pile.begin(), pile.end(), 0);
  int ways = 0;
  do {
    paper.piles = {pile};
    ways += paper_through_paper(paper) ? 0 : 1;
  } while (std::next_permutation(pile.begin(), pile.end()));
  return ways;
}

Problem trouble(std::string_view lines) {
  const Folding folding = test::written_folding(fmt::format("\nfolding own\n{}", lines));
  Problems problems;
  CHECK_FALSE(fold(folding, problems).has_value());
  REQUIRE(problems.size() == 1);
  return problems[0];
}

std::string said(const Problem &problem) {
  std::string text = fmt::format("{} [{}]\n  {}\n", problem.message, problem.check, problem.why);
  for (const WayOut &way : problem.type)
    text += fmt::format("  type {}{}{}\n", way.line, way.remark.empty() ? "" : " : ", way.remark);
  return text;
}

std::vector<int> pages_read(std::string_view lines) {
  const Folding folding = test::written_folding(fmt::format("\nfolding own\n{}", lines));
  Problems problems;
  const auto sheet = fold(folding, problems);
  INFO(test::messages(problems));
  REQUIRE(sheet);
  std::vector<int> panels;
  for (const PagePlace &page : sheet->pages)
    panels.push_back((page.front ? 1 : -1) * (page.row * sheet->columns + page.column + 1));
  return panels;
}

} // namespace

TEST_CASE("strips and maps of stamps fold in as many ways as mathematicians counted") {
  // Ways to fold a strip of n stamps, and a map of 2 by n or 3 by 3: OEIS A000136, A001415 and
  // A001418, from memory. Every order of layers is tried, so the rule of what paper can do is
  // neither too lax nor too strict.
  CHECK(ways_to_fold(1, 1) == 1);
  CHECK(ways_to_fold(2, 1) == 2);
  CHECK(ways_to_fold(3, 1) == 6);
  CHECK(ways_to_fold(4, 1) == 16);
  CHECK(ways_to_fold(5, 1) == 50);
  CHECK(ways_to_fold(6, 1) == 144);
  CHECK(ways_to_fold(7, 1) == 462);
  CHECK(ways_to_fold(1, 6) == 144);
  CHECK(ways_to_fold(2, 2) == 8);
  CHECK(ways_to_fold(3, 2) == 60);
  CHECK(ways_to_fold(2, 4) == 320);
}

TEST_CASE("a layer exchanged by hand is seen, and what it goes through is named") {
  Folding folding;
  folding.columns = 4;
  FoldedPaper paper = flat_paper(folding);
  REQUIRE_FALSE(fold_back_and_forth(paper, {.kind = FoldKind::back_and_forth}, 0).hindrance);
  REQUIRE_FALSE(paper_through_paper(paper));
  std::swap(paper.piles[0][1], paper.piles[0][2]);
  const auto clash = paper_through_paper(paper);
  REQUIRE(clash);
  CHECK(clash->kind == Clash::Kind::interlocked);
  CHECK(std::min(clash->a, clash->c) == 0);
  CHECK(std::max(clash->b, clash->d) == 3);

  FoldedPaper torn = flat_paper(folding);
  torn.cells[3].x = 0;
  const auto tear = paper_through_paper(torn);
  REQUIRE(tear);
  CHECK(tear->kind == Clash::Kind::torn);
  CHECK(tear->a == 2);
  CHECK(tear->b == 3);
}

TEST_CASE("slits after a fold, pieces cut loose and slits that open nothing are refused") {
  CHECK(said(trouble("  panels 4 by 2\n"
                     "  fold right over left\n"
                     "  cut between rows 1 and 2, columns 2 to 3\n"
                     "  fold top over bottom\n"
                     "  fold left over right\n")) ==
        "this slit comes after a fold [slit-across-fold]\n"
        "  a slit is told on the flat sheet of 4 by 2 panels; once paper is folded, a knife goes "
        "through all layers that lie there and cuts across the folds between\n"
        "  type cut        between rows 1 and 2, columns 2 to 3 : on a line before the first fold, "
        "with "
        "your own rows and columns\n");
  CHECK(said(trouble("  panels 4 by 2\n"
                     "  cut between rows 1 and 2\n"
                     "  fold right over left\n")) ==
        "panel 1 of row 2 falls off the sheet [panel-falls-off]\n"
        "  the slits together cut it loose; each panel must hang on another by an edge at least\n"
        "  type cut        between rows 1 and 2, columns 1 to 3 : so that it hangs at one end\n");
  CHECK(said(trouble("  panels 4 by 2\n"
                     "  fold top under bottom\n"
                     "  push ends together\n")) ==
        "pushing the ends together opens nothing [folding-cannot-be]\n"
        "  own has no slit between its ends: a strip of two layers, slit along its fold in the "
        "middle, opens there like a mouth when its ends are pushed\n"
        "  type cut        between rows 1 and 2, columns 2 to 3 : on a line before the folds, on "
        "4 by 2 panels folded top under bottom\n");
  CHECK(trouble("  panels 4 by 2\n"
                "  cut between rows 1 and 2, columns 1 to 2\n"
                "  fold top under bottom\n"
                "  push ends together\n")
            .message == "the slit reaches the end of the strip");
  CHECK(trouble("  panels 5 by 2\n"
                "  cut between rows 1 and 2, columns 2 to 4\n"
                "  fold top under bottom\n"
                "  push ends together\n")
            .message == "the slit runs beside an odd number of panels");
}

TEST_CASE("only a strip folds back and forth") {
  CHECK(said(trouble("  panels 3 by 2\n"
                     "  fold back and forth\n")) ==
        "these panels are no strip that folds back and forth [folding-cannot-be]\n"
        "  a strip has two ends, and each panel between them hangs on two others; panel 2 of row 2 "
        "does not; slits that reach in from alternate sides make a sheet one long strip\n"
        "  type cut        between rows 1 and 2, columns 1 to 3 : before the fold, with your own "
        "rows and columns\n");
  CHECK(trouble("  panels 3 by 1\n  fold back and forth, from panel 3\n").message ==
        "the strip has no panel after panel 3");
  CHECK(trouble("  panels 1 by 1\n  fold back and forth\n").check == "folding-cannot-be");
}

TEST_CASE("folds beyond the paper and through the middle of a page are refused") {
  CHECK(said(trouble("  panels 3 by 1\n  fold left over right, 3 panels\n")) ==
        "no paper lies beyond 3 panels here [folding-cannot-be]\n"
        "  the sheet lies 3 by 1 before this fold, and a fold leaves some paper where it is\n");
  CHECK(said(trouble("  panels 3 by 1\n  widths 1, 2, 1\n  fold left over right\n")) ==
        "this fold creases panel 2 in the middle [folding-cannot-be]\n"
        "  a page is one panel, whole; folds run along the lines between panels\n");
}

TEST_CASE("layers folded by themselves take nothing along that hangs on them") {
  // 1 2 3 4 folded right over left lie 1, 4 above it, and 2, 3 above that; 3 and 4 hang together at
  // the middle, 2 and 3 at the right.
  CHECK(pages_read("  panels 4 by 1\n"
                   "  fold right over left\n"
                   "  fold left over right, 1 panel, 1 layer\n"
                   "  fold left over right\n"
                   "  opens fold by fold\n")
            .size() == 8);
  CHECK(said(trouble("  panels 4 by 1\n"
                     "  fold right over left\n"
                     "  fold right over left, 1 panel, 1 layer\n"
                     "  fold left over right\n")) ==
        "this step would take paper through paper [paper-through-paper]\n"
        "  panel 2 and panel 3 hang together and would come to lie apart\n"
        "  type  : fold a sheet along with the lines and mend the one where it stops; `bodkin "
        "sheets --svg` draws the stages\n");
}

TEST_CASE("a flap that hangs on no fold at the spine would fall out") {
  CHECK(said(trouble("  panels 4 by 1\n"
                     "  fold left over right, 1 panel\n"
                     "  fold right over left, 1 panel\n"
                     "  fold left over right\n"
                     "  opens leaf by leaf\n")) ==
        "panel 1 hangs in no fold at the spine and would fall out of the book [leaf-not-held]\n"
        "  the spine is the crease of the last fold; its leaves turn about it\n"
        "  type opens fold by fold : if a reader unfolds it instead of turning leaves\n");
}

TEST_CASE("with pages on one side, no opening shows the other and no fold hides a page") {
  CHECK(said(trouble("  sides 1\n"
                     "  panels 4 by 1\n"
                     "  fold right over left\n"
                     "  fold left over right\n")) ==
        "the reader would see the back of panel 1, which holds no page [page-out-of-sight]\n"
        "  the folding prints one side (`sides 1`), so every opening must show that side and every "
        "fold that stays shut must hide the other\n"
        "  type paste ends back to back : if these are the two ends of a strip\n"
        "  type sides      2 : if pages stand on both sides and folds are cut open\n");
  CHECK(said(trouble("  sides 1\n"
                     "  panels 4 by 2\n"
                     "  fold right over left\n"
                     "  fold top over bottom\n"
                     "  fold left over right\n")) ==
        "the page on panel 4 of row 2 lies inside a fold that no reader opens "
        "[page-out-of-sight]\n"
        "  the folding prints one side (`sides 1`), so every opening must show that side and every "
        "fold that stays shut must hide the other\n"
        "  type sides      2 : if pages stand on both sides and folds are cut open\n");
}

TEST_CASE("the two ends of a winding strip are pasted, or show their backs") {
  const std::string meander = "  sides 1\n"
                              "  panels 4 by 2\n"
                              "  cut between rows 1 and 2, columns 1 to 3\n"
                              "  fold back and forth, from panel 2\n"
                              "  fold left under right, 1 panel\n";
  CHECK(said(trouble(meander)) ==
        "the reader would see the back of panel 1 of row 2, which holds no page "
        "[page-out-of-sight]\n"
        "  the folding prints one side (`sides 1`), so every opening must show that side and every "
        "fold that stays shut must hide the other\n"
        "  type paste ends back to back : if these are the two ends of a strip\n"
        "  type sides      2 : if pages stand on both sides and folds are cut open\n");
  CHECK(pages_read(meander + "  paste ends back to back\n") == std::vector{2, 3, 4, 8, 7, 6, 5, 1});
  CHECK(trouble("  sides 1\n  panels 4 by 1\n  fold back and forth\n  spine left\n"
                "  paste ends back to back\n")
            .message == "the ends of the strip do not come to lie on each other");
}

TEST_CASE("front and back tell the numbers of what is unfolded, and of nothing else") {
  const std::string letter = "  panels 3 by 1\n"
                             "  fold right over left, 1 panel\n"
                             "  fold left over right, 1 panel\n";
  // Letter folds are also numbered 5 6 1 outside: common practice, no source.
  CHECK(pages_read(letter + "  front 5, 6, 1\n  back 2, 3, 4\n") ==
        std::vector{3, -3, -2, -1, 1, 2});
  CHECK(said(trouble(letter + "  front 5, 6, 1\n  back 2, 3, 3\n")) ==
        "page 3 is told of two panels [page-claimed-twice]\n"
        "  one page cannot lie in two places, and page 4 has none\n"
        "  type back       2, 3, 4\n");
  CHECK(trouble(letter + "  front 5, 6, 9\n  back 2, 3, 4\n").why ==
        "a sheet of this folding holds pages 1 to 6");
  CHECK(trouble(letter + "  front 5, 6, 1\n").message ==
        "the back has 3 panels, and 0 pages are told");
  CHECK(trouble("  panels 2 by 1\n  fold left over right\n  front 1, 4\n  back 3, 2\n").message ==
        "opening the leaves shows page 4 where page 1 is told");
}

TEST_CASE("a million panels, pages past all bounds and endless strips end at once") {
  Folding many;
  many.columns = 1'000'000;
  many.steps = {{.kind = FoldKind::back_and_forth}};
  Problems problems;
  CHECK_FALSE(fold(many, problems).has_value());
  CHECK(problems.at(0).message ==
        "1000000 by 1 panels are more than the 1024 that a sheet can have here");

  Desk longest(20'000, "accordion-one-side");
  const Imposition strip = impose(longest.edition, longest.sources, longest.problems);
  CHECK(strip.sheets.size() == 5'000);
  CHECK(test::drawn(strip.sheets[4'999].sides[0]) == "19997 19998 19999 20000");
}

TEST_CASE("a sheet too small for its tab is told so") {
  Desk desk(8, "accordion");
  desk.edition.folding.value.tab->width = Length::inches(12);
  impose(desk.edition, desk.sources, desk.problems);
  REQUIRE(desk.problems.size() == 1);
  CHECK(said(desk.problems[0]) ==
        "letter has no room for the panels of accordion [sheet-too-small]\n"
        "  a sheet of 11in x 8 1/2in is parted into 4 by 1 panels, less "
        "what its tab and its narrower panels give up\n"
        "  type tab        1/2in at right : or a larger sheet\n");
}

TEST_CASE("a caliper of a metre does not fold, and of thick card the inner pages leave the book") {
  Desk desk(8);
  desk.edition.stocks[0].caliper.value = Length::mm(1000);
  desk.impose();
  REQUIRE(desk.problems.size() == 1);
  CHECK(desk.problems[0].check == "too-thick");
  CHECK(desk.problems[0].message == "cream is 39.3701in thick and does not fold");

  Desk thick(200);
  thick.edition.stocks[0].caliper.value = Length::mm(2);
  thick.impose();
  REQUIRE(thick.problems.size() == 1);
  CHECK(said(thick.problems[0]) ==
        "the pages of sheet 36 stand out 2.7559in past those of the outermost [too-thick]\n"
        "  cream is 0.0787in thick, a page is 5 1/2in wide, and 35 sheets lie round this one at "
        "the fold\n"
        "  type caliper    0.004in : for office paper; a card is about 0.01in\n");
}
