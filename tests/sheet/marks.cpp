#include "sheet/marks.hpp"

#include "sheet/live.hpp"
#include "sheet/paper.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using test::Desk;

namespace {

FinishStep trim(Length fore_edge, Length head, Length foot) {
  FinishStep step;
  step.kind = StepKind::trim;
  step.fore_edge = fore_edge;
  step.head = head;
  step.foot = foot;
  return step;
}

constexpr Length half = Length::inches(1, 2);

std::string told(const Marks &marks) {
  std::string text;
  for (const MarkLine &line : marks.lines) {
    const std::string_view kind = line.kind == MarkLine::Kind::fold  ? "fold"
                                  : line.kind == MarkLine::Kind::cut ? "cut"
                                                                     : "staple";
    text += fmt::format("{} {} {} to {} {}\n", kind, line.start.x.in_points(),
                        line.start.y.in_points(), line.end.x.in_points(), line.end.y.in_points());
  }
  for (const MarkText &words : marks.texts)
    text += fmt::format("{} at {} {}, {} x {}, turn {}\n", words.text, words.box.x.in_points(),
                        words.box.y.in_points(), words.box.width.in_points(),
                        words.box.height.in_points(), words.turn);
  return text;
}

// Everything that a mark covers is inside the bare edge and outside what stays of every page.
bool vanishes(const Box &mark, const Sheet &sheet, const Side &side, const Trims &trims,
              Length bare) {
  if (mark.x < bare || mark.y < bare || mark.right() > sheet.size.width - bare ||
      mark.foot() > sheet.size.height - bare)
    return false;
  for (const Place &place : side.places) {
    const bool recto = place.left == Meets::spine;
    const bool about = place.turn == 180;
    const Length left = recto == about ? trims.fore_edge + place.creep : Length();
    const Length right = recto == about ? Length() : trims.fore_edge + place.creep;
    const Box stays{place.box.x + left, place.box.y + (about ? trims.foot : trims.head),
                    place.box.width - left - right, place.box.height - trims.head - trims.foot};
    if (mark.x < stays.right() && mark.right() > stays.x && mark.y < stays.foot() &&
        mark.foot() > stays.y)
      return false;
  }
  return true;
}

Box around(const MarkLine &line) {
  return {line.start.x, line.start.y, line.end.x - line.start.x, line.end.y - line.start.y};
}

} // namespace

TEST_CASE("where nothing is cut off, no mark could vanish, and there is none") {
  Desk desk(8);
  const Imposition imposition = desk.impose();
  CHECK(told(marks_of(desk.edition, imposition, 0, SideName::front)) == "");
}

TEST_CASE("a trim inside the bare edge leaves no strip for marks") {
  Desk desk(8);
  desk.edition.finish = {trim(Length::inches(1, 8), {}, {})};
  const Imposition imposition = desk.impose();
  CHECK(told(marks_of(desk.edition, imposition, 0, SideName::front)) == "");
}

TEST_CASE("with room all round, folds, cuts and sheet number stand in what is cut off") {
  Desk desk(4);
  desk.edition.finish = {trim(half, half, half)};
  const Imposition imposition = desk.impose();
  CHECK(told(marks_of(desk.edition, imposition, 0, SideName::front)) ==
        "fold 396 18 to 396 27\n"
        "fold 396 585 to 396 594\n"
        "cut 36 18 to 36 27\n"
        "cut 36 585 to 36 594\n"
        "cut 18 36 to 27 36\n"
        "cut 18 576 to 27 576\n"
        "cut 765 36 to 774 36\n"
        "cut 756 18 to 756 27\n"
        "cut 756 585 to 756 594\n"
        "cut 765 576 to 774 576\n"
        "1 front at 23.5 90, 6 x 45, turn 90\n");
}

TEST_CASE("marks none leaves all of them out") {
  Desk desk(4);
  desk.edition.finish = {trim(half, half, half)};
  desk.edition.marks.value = false;
  const Imposition imposition = desk.impose();
  CHECK(told(marks_of(desk.edition, imposition, 0, SideName::front)) == "");
}

TEST_CASE("staples are marked in the fore-edge strips of the outermost sheet's front alone") {
  Desk desk(8);
  FinishStep staple;
  staple.kind = StepKind::staple;
  staple.staples = 2;
  staple.from_head_and_foot = Length::inches(2);
  desk.edition.finish = {staple, trim(half, {}, {})};
  const Imposition imposition = desk.impose();
  CHECK(told(marks_of(desk.edition, imposition, 0, SideName::front)) ==
        "staple 18 144 to 27 144\n"
        "staple 18 468 to 27 468\n"
        "staple 765 144 to 774 144\n"
        "staple 765 468 to 774 468\n"
        "1 front at 23.5 90, 6 x 45, turn 90\n");
  const Marks back = marks_of(desk.edition, imposition, 0, SideName::back);
  CHECK(back.lines.empty());
  REQUIRE(back.texts.size() == 1);
  CHECK(back.texts[0].text == "1 back");
  CHECK(marks_of(desk.edition, imposition, 1, SideName::front).texts[0].text == "2 front");
}

TEST_CASE("every mark vanishes from the finished copy, on every side of every folding") {
  for (const std::string_view name : {"single-fold", "saddle-stitch", "section-8", "section-16"})
    for (const std::int64_t sixteenths : {2, 5, 6, 8, 12})
      for (const int which : {1, 2, 3, 4, 5, 6, 7}) {
        Desk desk(name == "single-fold" ? 4 : 16, name);
        const Length cut = Length::inches(sixteenths, 16);
        FinishStep staple;
        staple.kind = StepKind::staple;
        staple.staples = 3;
        staple.from_head_and_foot = Length::inches(1);
        desk.edition.finish = {staple, trim((which & 1) != 0 ? cut : Length(),
                                            (which & 2) != 0 ? cut : Length(),
                                            (which & 4) != 0 ? cut : Length())};
        const Imposition imposition = desk.impose();
        for (int sheet = 0; sheet < static_cast<int>(imposition.sheets.size()); ++sheet)
          for (const SideName side : {SideName::front, SideName::back}) {
            const Sheet &paper = imposition.sheets[static_cast<std::size_t>(sheet)];
            const Side &printed = paper.sides[side == SideName::front ? 0 : 1];
            const Trims trims = trims_of(desk.edition);
            const Marks marks = marks_of(desk.edition, imposition, sheet, side);
            for (const MarkLine &line : marks.lines)
              CHECK(vanishes(around(line), paper, printed, trims, Length::inches(1, 4)));
            for (const MarkText &text : marks.texts)
              CHECK(vanishes(text.box, paper, printed, trims, Length::inches(1, 4)));
          }
      }
}

TEST_CASE("sewing holes are marked on the first page where the needle goes, smaller than a hole") {
  Desk desk(6, "stab-sewn");
  const Imposition imposition = desk.impose();
  std::vector<Spot> middles;
  for (const MarkLine &line : marks_of(desk.edition, imposition, 0, SideName::front).lines) {
    CHECK(line.kind == MarkLine::Kind::hole);
    const bool across = line.start.y == line.end.y;
    CHECK((across ? line.end.x - line.start.x : line.end.y - line.start.y) == Length::points(2));
    if (across)
      middles.push_back({line.start.x + Length::points(1), line.start.y});
  }
  // Four holes 3/8in from the spine, the outer ones 1/2in from head and foot: 10in in three steps.
  REQUIRE(middles.size() == 4);
  for (int i = 0; i < 4; ++i)
    CHECK(middles[static_cast<std::size_t>(i)] ==
          Spot{Length::inches(3, 8), Length::inches(1, 2) + Length::inches(10) * i / 3});
  CHECK(marks_of(desk.edition, imposition, 0, SideName::back).lines.empty());
  CHECK(marks_of(desk.edition, imposition, 1, SideName::front).lines.empty());
  desk.edition.marks.value = false;
  CHECK(marks_of(desk.edition, imposition, 0, SideName::front).lines.empty());
}
