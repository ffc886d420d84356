#include "sheet/fold.hpp"

#include "measure/limits.hpp"
#include "sheet/paper.hpp"

#include <doctest/doctest.h>

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

} // namespace

TEST_CASE("a sheet folded once has two leaves, joined at the spine") {
  Problems problems;
  const auto sheet = fold(folding(2, 1, {over(Part::left)}), problems);
  REQUIRE(sheet);
  CHECK(problems.empty());
  REQUIRE(sheet->leaves.size() == 2);
  CHECK(sheet->leaves[0].column == 1);
  CHECK(sheet->leaves[0].spine == Toward::left);
  CHECK(sheet->leaves[0].recto_on_front);
  CHECK(sheet->leaves[1].column == 0);
  CHECK(sheet->leaves[1].spine == Toward::right);
  CHECK_FALSE(sheet->leaves[1].recto_on_front);
  CHECK(sheet->leaves[0].head == Toward::up);
  CHECK(sheet->leaves[1].head == Toward::up);
  CHECK_FALSE(sheet->front_up);
  REQUIRE(sheet->creases.size() == 1);
  CHECK(sheet->creases[0].at == 1);
  CHECK(sheet->creases[0].spine);
}

TEST_CASE("folding over with the inside up is folding under with the outside up") {
  Problems problems;
  for (const Part part : {Part::left, Part::right})
    for (const bool beneath : {false, true}) {
      const auto sheet = fold(folding(2, 1, {{part, beneath, {}}}), problems);
      REQUIRE(sheet);
      CHECK(sheet->leaves[0].column == 1);
      CHECK(sheet->leaves[0].head == Toward::up);
      CHECK(sheet->leaves[0].recto_on_front);
      CHECK(sheet->front_up == beneath);
    }
}

TEST_CASE("a spine across the sheet turns the pages a quarter") {
  Problems problems;
  const auto sheet = fold(folding(1, 2, {over(Part::top)}), problems);
  REQUIRE(sheet);
  CHECK_FALSE(sheet->spine_upright);
  CHECK(turn_of(sheet->leaves[0].head) == 90);
  CHECK(turn_of(sheet->leaves[1].head) == 90);
}

TEST_CASE("every fold creases the sheet from edge to edge, the later ones in several places") {
  Problems problems;
  const auto sheet =
      fold(folding(4, 2, {over(Part::right), over(Part::top), over(Part::left)}), problems);
  REQUIRE(sheet);
  std::string creases;
  for (const Crease &crease : sheet->creases)
    creases += (crease.upright ? "column " : "row ") + std::to_string(crease.at) +
               (crease.spine ? " spine, " : ", ");
  CHECK(creases == "column 2, row 1, column 3 spine, column 1 spine, ");
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
  REQUIRE(problems[0].type.size() == 1);
  CHECK(problems[0].type[0].line == "panels 8 by 1");
}

TEST_CASE("a folding with a fixed number of sheets holds no more than the longest edition") {
  Folding many = folding(2, 1, {over(Part::left)});
  many.sheets = Known<int>{2'000'000'000, {}};
  CHECK(trouble(many) ==
        "2000000000 sheets of 4 pages are more than the 20000 pages of the longest "
        "edition [folding-cannot-be]\n");
}
