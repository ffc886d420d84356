// Panels that lie within a fold made after them. That a panel folded in is a little narrower is
// common practice, no source; that a crease round k layers of paper goes round k calipers is
// geometry.
#include "sheet/folded_in.hpp"

#include "edition/reading.hpp"
#include "problems/render.hpp"
#include "sheet/fold.hpp"
#include "sheet/geometry.hpp"
#include "sheet/paper.hpp"
#include "sheet/parts.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using bodkin::tests::read;

namespace {

// Six blank pages on a legal sheet, or as many as asked for.
std::string told(std::string_view folding, std::string_view caliper = "0.004in",
                 std::string_view size = "4 2/3in x 8.5in", int pages = 6) {
  const tests::Read made = read(fmt::format("edition \"Test\"\n"
                                            "  size {}\n"
                                            "  folding mine\n"
                                            "  run 10 copies\n"
                                            "  paper plain\n"
                                            "  machine copier\n"
                                            "stock plain\n"
                                            "  weight 20 lb bond\n"
                                            "  caliper {}\n"
                                            "  sheet legal\n"
                                            "  costs included\n"
                                            "machine copier\n"
                                            "  prints black at $0.10 a side\n"
                                            "folding mine\n{}"
                                            "page 1-{}\n"
                                            "  blank\n",
                                            size, caliper, folding, pages));
  Problems problems;
  impose_parts(made.edition(), *made.sources, problems);
  return as_text(problems, *made.sources, false);
}

constexpr std::string_view letter = "  panels 3 by 1\n"
                                    "  fold right over left, 1 panel\n"
                                    "  fold left over right, 1 panel\n";

} // namespace

TEST_CASE("a flap as wide as the panel that it lies on buckles, with the line to type") {
  CHECK(
      told(letter) ==
      R"(almanac.bodkin:15:3: warning: column 3 is folded in and buckles against the fold between columns 1 and 2 [panel-buckles]
  panels 3 by 1
  ~~~~~~~~~~~~~
  why   its end lies within that fold and reaches right into it; one layer of paper of 0.004in lies
        there, and a crease needs as much to go round, so the panel stands in a bow
  type  narrow     column 3 by 1/16in      (under `folding mine`)
)");
}

TEST_CASE("a sixteenth of an inch less is enough for paper") {
  CHECK(told(fmt::format("{}  narrow column 3 by 1/16in\n", letter)) == "");
}

TEST_CASE("a thicker paper needs more room than a hair") {
  const std::string hair = fmt::format("{}  narrow column 3 by 0.01in\n", letter);
  CHECK(told(hair).empty());
  CHECK(told(hair, "0.012in").find("stays only 0.01in short of it") != std::string::npos);
  CHECK(told(hair, "0.012in").find("narrow     column 3 by 1/16in") != std::string::npos);
}

TEST_CASE("what folds back and forth, or in half and half again, has nothing folded in") {
  CHECK(told("  panels 3 by 1\n  fold back and forth\n") == "");
  CHECK(told("  panels 4 by 1\n  fold right over left\n  fold right over left\n"
             "  opens fold by fold\n",
             "0.004in", "3.5in x 8.5in", 8) == "");
}

TEST_CASE("flaps that meet exactly are told to leave a gap") {
  const std::string gate = "  panels 3 by 1\n  widths 1, 2, 1\n"
                           "  fold left over right, 1 panel\n"
                           "  fold right over left, 1 panel\n";
  const std::string text = told(gate, "0.004in", "7in x 8.5in");
  CHECK(text.find("note: the ends of columns 1 and 3 meet with no gap [flaps-meet]") !=
        std::string::npos);
  CHECK(text.find("type  narrow     column 1 by 1/16in\n"
                  "        narrow     column 3 by 1/16in      (under `folding mine`)") !=
        std::string::npos);
}

TEST_CASE("both flaps of a double gate lie within the last fold") {
  const std::string gate = "  panels 4 by 1\n"
                           "  fold left over right, 1 panel\n"
                           "  fold right over left, 1 panel\n"
                           "  fold left over right\n";
  const std::string text = told(gate, "0.004in", "3.5in x 8.5in", 8);
  CHECK(text.find("column 1 is folded in and buckles against the fold between columns 2 and 3") !=
        std::string::npos);
  CHECK(text.find("column 4 is folded in and buckles against the fold between columns 2 and 3") !=
        std::string::npos);
}

TEST_CASE("rolled up, each panel has to be narrower than the next") {
  const std::string roll = "  panels 4 by 1\n"
                           "  narrow column 4 by 1/8in\n"
                           "  fold right over left, 1 panel\n"
                           "  fold right over left, 1 panel\n"
                           "  fold left over right, 1 panel\n";
  const std::string text = told(roll, "0.004in", "3.6in x 8.5in", 8);
  CHECK(text.find("column 4 is folded in") == std::string::npos);
  CHECK(text.find("column 3 is folded in and buckles against the fold between columns 1 and 2") !=
        std::string::npos);
}

TEST_CASE("no folding of the shelf buckles on office paper") {
  for (const std::string &name : test::shelf_foldings()) {
    CAPTURE(name);
    test::Desk desk(4);
    desk.fold_as(test::shelf_folding(name));
    Problems problems;
    const auto folded = fold(*desk.edition.folding, problems);
    REQUIRE(folded);
    Imposition imposition;
    Sheet sheet;
    sheet.size = lying(*paper_named("letter"), desk.edition.folding->across);
    sheet.stock = test::cream;
    imposition.sheets.push_back(sheet);
    check_folded_in(desk.edition, folded->folded_in, imposition, desk.sources, problems);
    CHECK(test::messages(problems) == "");
  }
}
