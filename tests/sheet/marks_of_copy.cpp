// Marks at the spine and round pieces laid several up.
#include "sheet/marks.hpp"
#include "sheet/parts.hpp"

#include "edition/reading.hpp"
#include "problems/render.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

struct Made {
  tests::Read manuscript;
  std::vector<CopyPart> parts;
};

Made made(const std::string &facts, const std::string &rest) {
  Made it{read(small_edition(facts, "\n" + rest)), {}};
  Problems problems;
  it.parts = impose_parts(it.manuscript.edition(), *it.manuscript.sources, problems);
  CHECK(as_text(problems, *it.manuscript.sources, false) == "");
  return it;
}

// The lines of one kind on a side: "x y to x y", in points.
std::string lines_of(const CopyPart &part, int sheet, SideName side, MarkLine::Kind kind) {
  std::string text;
  for (const MarkLine &line : marks_of(*part.edition, part.imposition, sheet, side).lines)
    if (line.kind == kind)
      text += fmt::format("{} {} to {} {}\n", line.start.x.in_points(), line.start.y.in_points(),
                          line.end.x.in_points(), line.end.y.in_points());
  return text;
}

// Where crosses of holes have their middles.
std::string holes_of(const CopyPart &part, int sheet, SideName side) {
  std::string text;
  for (const MarkLine &line : marks_of(*part.edition, part.imposition, sheet, side).lines)
    if (line.kind == MarkLine::Kind::hole && line.start.y == line.end.y)
      text += fmt::format("{} {}\n", line.start.x.in_points() + 1, line.start.y.in_points());
  return text;
}

constexpr const char *sewn = "finish\n  fold all\n  sew 3 holes, 1in from head and foot\n";

} // namespace

TEST_CASE("a section is pierced where its middle pages meet, on its innermost sheet's inside") {
  const Made it = made("pages 16", std::string("page 1-16\n  blank\n") + sewn);
  const CopyPart &book = it.parts.front();
  REQUIRE(book.imposition.sheets.size() == 4);
  // The fold of letter lies 5 1/2in from its edge; a half-letter page is 8 1/2in high.
  CHECK(holes_of(book, 3, SideName::back) == "396 72\n396 306\n396 540\n");
  CHECK(holes_of(book, 3, SideName::front) == "");
  for (const int outer : {0, 1, 2})
    CHECK(holes_of(book, outer, SideName::back) + holes_of(book, outer, SideName::front) == "");
}

TEST_CASE("each section that is gathered has holes of its own") {
  const Made it =
      made("pages 32\n  folding sewn-sections", std::string("page 1-32\n  blank\n") + sewn);
  const CopyPart &book = it.parts.front();
  REQUIRE(book.imposition.sheets.size() == 8);
  for (const int inner : {3, 7})
    CHECK(holes_of(book, inner, SideName::back) == "396 72\n396 306\n396 540\n");
  CHECK(holes_of(book, 4, SideName::back) == "");
}

TEST_CASE("sheets of copies that are bound otherwise bear no crosses for those that are sewn") {
  std::string manuscript =
      small_edition("pages 4", std::string("page 1-4\n  blank\n") + sewn + "    only fine\n");
  const std::string_view run = "run 10 copies";
  manuscript.replace(manuscript.find(run), run.size(),
                     "run 8 copies called plain\n  run 2 copies called fine");
  Made it{read(manuscript), {}};
  Problems problems;
  it.parts = impose_parts(it.manuscript.edition(), *it.manuscript.sources, problems);
  REQUIRE(it.manuscript.edition().runs.size() == 2);
  CHECK(holes_of(it.parts.front(), 0, SideName::back) == "");
}

TEST_CASE("a head that is cut before sewing moves the holes down") {
  const Made it = made("pages 4", "page 1-4\n  blank\nfinish\n  fold all\n  trim head 1/2in\n"
                                  "  sew 3 holes, 1in from head and foot\n");
  CHECK(holes_of(it.parts.front(), 0, SideName::back) == "396 108\n396 324\n396 540\n");
}

TEST_CASE("under a wrap, gathered sections have a stair of steps on their folds") {
  const Made it = made("pages 48\n  folding sewn-sections",
                       "page 1-48\n  blank\nwrap on long\n  page 1\n    blank\n"
                       "stock long\n  weight 20 lb bond\n  sheet tabloid, grain short\n"
                       "  costs $1 a sheet\n");
  const CopyPart &book = it.parts.front();
  const auto step = [&](int sheet) {
    return lines_of(book, sheet, SideName::front, MarkLine::Kind::step);
  };
  CHECK(step(0) == "396 36 to 396 45\n");
  CHECK(step(4) == "396 45 to 396 54\n");
  CHECK(step(8) == "396 54 to 396 63\n");
  CHECK(step(1) == "");
  CHECK(lines_of(book, 0, SideName::back, MarkLine::Kind::step) == "");
  // As wide as eight leaves are thick.
  const Edition &edition = *book.edition;
  const Marks marks = marks_of(edition, book.imposition, 0, SideName::front);
  const auto found = std::find_if(marks.lines.begin(), marks.lines.end(), [](const MarkLine &line) {
    return line.kind == MarkLine::Kind::step;
  });
  REQUIRE(found != marks.lines.end());
  CHECK(found->width == *edition[book.imposition.sheets[0].stock].caliper * 8);
}

TEST_CASE("a spine that stays bare, or sheets nested in one section, have no steps") {
  const Made bare = made("pages 32\n  folding sewn-sections", "page 1-32\n  blank\n");
  CHECK(lines_of(bare.parts.front(), 0, SideName::front, MarkLine::Kind::step) == "");
  const Made nested = made("pages 16", "page 1-16\n  blank\nwrap on plain\n  page 1\n    blank\n");
  CHECK(lines_of(nested.parts.front(), 0, SideName::front, MarkLine::Kind::step) == "");
}

TEST_CASE("cuts between pieces are marked in what is left over, and nowhere else") {
  const Made it = made("", "page 1-8\n  blank\ninsert card\n  size 2in x 3in\n  folding flat\n"
                           "  up 4\n  page 1\n    blank\n");
  // Two by two of 144 by 216 points in the middle of a letter sheet: from 162, 180 to 450, 612.
  // Marks keep a point from the pieces and reach an eighth of an inch.
  const Sheet &sheet = it.parts[1].imposition.sheets.front();
  REQUIRE(sheet.size == Size{Length::points(612), Length::points(792)});
  CHECK(lines_of(it.parts[1], 0, SideName::front, MarkLine::Kind::cut) ==
        "152 180 to 161 180\n451 180 to 460 180\n"
        "152 396 to 161 396\n451 396 to 460 396\n"
        "152 612 to 161 612\n451 612 to 460 612\n"
        "162 170 to 162 179\n162 613 to 162 622\n"
        "306 170 to 306 179\n306 613 to 306 622\n"
        "450 170 to 450 179\n450 613 to 450 622\n");
}

TEST_CASE("where pieces fill the sheet nothing is left over to mark") {
  const Made it = made(
      "", "page 1-8\n  blank\ninsert slip\n  size quarter-letter\n  up 4\n  page 1\n    blank\n");
  CHECK(lines_of(it.parts[1], 0, SideName::front, MarkLine::Kind::cut) == "");
}
