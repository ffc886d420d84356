#include "sheet/finish_text.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;

namespace {

FinishStep step(StepKind kind) {
  FinishStep step;
  step.kind = kind;
  return step;
}

} // namespace

TEST_CASE("an edition without finish tells nothing") {
  Desk desk(8);
  CHECK(finish_in_words(desk.edition, desk.impose()) == "");
}

TEST_CASE("finish is told in order, with places from the head and each caution once") {
  Desk desk(8);
  FinishStep trim = step(StepKind::trim), punch = step(StepKind::punch);
  trim.fore_edge = trim.head = Length::inches(1, 4);
  trim.work.caution = Known<std::string>{"The blade is new.", {}};
  punch.holes = 2;
  punch.from_spine = Length::inches(3, 8);
  punch.from_head_and_foot = Length::inches(2);
  punch.place_written = true;
  desk.edition.finish = {step(StepKind::collate), step(StepKind::fold), trim, trim, punch};
  CHECK(
      finish_in_words(desk.edition, desk.impose()) ==
      "\n"
      "After printing, on each copy, in this order:\n"
      "  1. collate: 2 sheets make a copy\n"
      "  2. fold: all sheets\n"
      "  3. trim: fore-edge 1/4in, head 1/4in\n"
      "     The copy then measures 5 1/4in x 8 1/4in.\n"
      "     Creep is made up for by moving matter towards the fold, most on pages 3, 4, 5 and 6: "
      "0.006in\n"
      "     less inner margin.\n"
      "     Take care: The blade is new.\n"
      "     Take care: Cut with a sharp blade along a steel edge, on a mat, fingers behind the "
      "edge "
      "and off\n"
      "     the line; several light cuts, a few sheets at a time; the blade is covered when it is "
      "laid\n"
      "     down.\n"
      "  4. trim: fore-edge 1/4in, head 1/4in\n"
      "     The copy then measures 5in x 8in.\n"
      "  5. punch: 2 holes, 3/8in from the spine, at 2in and 6in from the head\n"
      "     Take care: Keep fingers out of the punch's mouth; a hollow punch is struck on a soft "
      "board,\n"
      "     with goggles.\n"
      "  Rules of the place where you work come first.\n");
}

TEST_CASE("a folding's own holes are told with their places") {
  Desk desk(8);
  desk.edition.folding.value.holes = Holes{3, Length::inches(3, 8), Length::inches(1, 4), Range{}};
  desk.edition.finish = {step(StepKind::sew)};
  const std::vector<FinishTold> told = finish_told(desk.edition, desk.impose());
  REQUIRE(told.size() == 1);
  CHECK(told[0].says ==
        "sew: 3 holes through the side, 3/8in from the spine, at 1/4in, 4 1/4in and 8 1/4in from "
        "the head");
}

// The stop of a long-reach stapler stands as far from the staples as the fore-edge from the fold
// (derived); what the leg has beyond the paper bends over.
TEST_CASE("a staple is told with the stapler's stop and the leg that is left") {
  Desk desk(8);
  FinishStep staple = step(StepKind::staple);
  staple.staples = 2;
  staple.leg = Length::inches(1, 4);
  staple.from_head_and_foot = Length::inches(2);
  desk.edition.finish = {step(StepKind::fold), staple};
  const std::string told = finish_in_words(desk.edition, desk.impose());
  CAPTURE(told);
  CHECK(told.find("     Set the stapler's stop 5 1/2in from the staples: so far it is from the "
                  "fore-edge to the fold.\n") != std::string::npos);
}

// Derived: letter is 8 1/2in high; of a page of 8in, half an inch of paper is beyond it, half of
// that at the head, and of one of 5in another half inch at the fore-edge.
TEST_CASE("staples and stop are measured on the paper where it is larger than the page") {
  Desk desk(8);
  desk.edition.size.value = {Length::inches(5), Length::inches(8)};
  FinishStep staple = step(StepKind::staple);
  staple.staples = 2;
  staple.leg = Length::inches(1, 4);
  staple.from_head_and_foot = Length::inches(2);
  desk.edition.finish = {step(StepKind::fold), staple};
  const std::string told = finish_in_words(desk.edition, desk.impose());
  CAPTURE(told);
  CHECK(told.find("at 2 1/4in and 6 1/4in from the head") != std::string::npos);
  CHECK(told.find("Set the stapler's stop 5 1/2in from the staples") != std::string::npos);
}
