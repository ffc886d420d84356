#include "sheet/fold.hpp"

#include "measure/limits.hpp"
#include "sheet/paper.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using test::messages;

namespace {

Folding folding(int columns, int rows, std::vector<FoldStep> steps) {
  Folding result;
  result.name = "own";
  result.columns = columns;
  result.rows = rows;
  result.steps = std::move(steps);
  return result;
}

FoldStep over(Part moving) { return {moving, false, {}}; }
FoldStep under(Part moving) { return {moving, true, {}}; }

std::string trouble(const Folding &of) {
  Problems problems;
  CHECK_FALSE(fold(of, problems).has_value());
  return messages(problems);
}

std::string told(const FoldedSheet &sheet) {
  constexpr std::string_view ways[]{"up", "right", "down", "left"};
  std::string text;
  for (const PagePlace &page : sheet.pages)
    text += fmt::format("{}{} {} {} spine {}", text.empty() ? "" : ", ", page.column,
                        page.front ? "front" : "back", ways[static_cast<int>(page.head)],
                        page.spine ? ways[static_cast<int>(*page.spine)] : "nowhere");
  return text;
}

std::string creases(const FoldedSheet &sheet) {
  std::string text;
  for (const SheetLine &line : sheet.creases) {
    const std::string_view beside = line.upright ? "row" : "column";
    text += fmt::format("{} {} {} ", line.upright ? "column" : "row", line.at,
                        line.last == line.first + 1
                            ? fmt::format("{} {}", beside, line.last)
                            : fmt::format("{}s {}-{}", beside, line.first + 1, line.last));
    text += fmt::format("{}{}, ", line.spine ? "spine " : "", line.valley ? "valley" : "mountain");
  }
  return text;
}

} // namespace

TEST_CASE("a sheet folded once has four pages, joined at the spine") {
  Problems problems;
  const auto sheet = fold(folding(2, 1, {over(Part::left)}), problems);
  REQUIRE(sheet);
  CHECK(problems.empty());
  CHECK(told(*sheet) == "1 front up spine left, 1 back up spine left, 0 back up spine right, "
                        "0 front up spine right");
  CHECK_FALSE(sheet->front_up);
  CHECK(sheet->leaves_turn());
  REQUIRE(sheet->creases.size() == 1);
  CHECK(sheet->creases[0] == SheetLine{true, 1, 0, 1, 0, true, false});
}

TEST_CASE("folding over with the inside up is folding under with the outside up") {
  Problems problems;
  for (const Part part : {Part::left, Part::right})
    for (const bool beneath : {false, true}) {
      const auto sheet = fold(folding(2, 1, {{part, beneath, {}}}), problems);
      REQUIRE(sheet);
      CHECK(sheet->pages[0].column == 1);
      CHECK(sheet->pages[0].head == Toward::up);
      CHECK(sheet->pages[0].front);
      CHECK(sheet->front_up == beneath);
    }
}

TEST_CASE("a spine across the sheet turns the pages a quarter") {
  Problems problems;
  const auto sheet = fold(folding(1, 2, {over(Part::top)}), problems);
  REQUIRE(sheet);
  CHECK_FALSE(sheet->turns_upright);
  for (const PagePlace &page : sheet->pages)
    CHECK(turn_of(page.head) == 90);
}

TEST_CASE("folds crease the sheet along lines between panels, towards the reader or away") {
  Problems problems;
  const auto sheet =
      fold(folding(4, 2, {over(Part::right), over(Part::top), over(Part::left)}), problems);
  REQUIRE(sheet);
  // As on the sheet of 5 12 9 8 over 4 13 16 1: the cover's crease, between 16 and 1 in the lower
  // row, folds away from who looks at the front; between 4 and 13 the fronts lie on each other.
  CHECK(creases(*sheet) == "column 2 rows 1-2 mountain, row 1 columns 3-4 mountain, "
                           "row 1 columns 1-2 valley, column 1 row 1 spine mountain, "
                           "column 1 row 2 spine valley, column 3 row 2 spine mountain, "
                           "column 3 row 1 spine valley, ");
}

TEST_CASE("what paper cannot do is a problem at its step") {
  CHECK(trouble(folding(3, 2, {over(Part::left)})) ==
        "the sheet lies 3 panels across here, and a fold lays one half on the other "
        "[folding-cannot-be]\n");
  CHECK(trouble(folding(2, 1, {over(Part::left), under(Part::right)})) ==
        "the sheet lies 1 panel across here, and a fold lays one half on the other "
        "[folding-cannot-be]\n");
  CHECK(trouble(folding(2, 1, {})) == "own never folds its sheet [folding-cannot-be]\n");
  CHECK(trouble(folding(4, 2, {over(Part::left)})) ==
        "after its last fold own still lies 2 by 2 panels [folding-cannot-be]\n");
  CHECK(trouble(folding(64, 32, {over(Part::left)})) ==
        "64 by 32 panels are more than the 1024 that a sheet can have here [folding-cannot-be]\n");
  CHECK(trouble(folding(2'000'000'000, 2'000'000'000, {over(Part::left)})) ==
        "2000000000 by 2000000000 panels are more than the 1024 that a sheet can have here "
        "[folding-cannot-be]\n");
  CHECK(trouble(folding(0, -3, {over(Part::left)})) ==
        "0 by -3 panels are more than the 1024 that a sheet can have here [folding-cannot-be]\n");
}

TEST_CASE("a fold with no middle says how the sheet lies and what to write instead") {
  Problems problems;
  CHECK_FALSE(fold(folding(6, 1, {over(Part::left), over(Part::right)}), problems).has_value());
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].why ==
        "own starts with 6 by 1 panels; before this fold they lie 3 by 1, and the "
        "middle of 3 is no line between two panels");
  REQUIRE(problems[0].type.size() == 2);
  CHECK(problems[0].type[0].line == "fold       right over left, 1 panel");
  CHECK(problems[0].type[1].line == "panels 8 by 1");
}

TEST_CASE("a folding with a fixed number of sheets holds no more than the longest edition") {
  Folding many = folding(2, 1, {over(Part::left)});
  many.sheets = Known<int>{2'000'000'000, {}};
  CHECK(trouble(many) ==
        "2000000000 sheets of 4 pages are more than the 20000 pages of the longest "
        "edition [folding-cannot-be]\n");
}
