#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::vector<FinishStep> steps_of(std::string_view lines) {
  return read(small_edition("", "finish\n" + std::string(lines))).edition().finish;
}

} // namespace

TEST_CASE("steps for needle, punch, blade and glue keep their counts, places and words") {
  const std::vector<FinishStep> steps = steps_of("  cut slit\n"
                                                 "  glue tabs \"with paste\"\n"
                                                 "  sew 5 holes, 3/4in from head and foot\n"
                                                 "  punch 1 hole, 3/8in from spine\n"
                                                 "  round 2 corners, radius 1/4in\n"
                                                 "  tie \"a yard of red thread\"\n"
                                                 "    takes 30 s a copy\n"
                                                 "    costs $0.05 a copy\n"
                                                 "    caution \"Mind the knot.\"\n");
  REQUIRE(steps.size() == 6);
  CHECK(name_of(steps[0]) == "cut slit");
  CHECK(name_of(steps[1]) == "glue tabs");
  CHECK(steps[1].text == "with paste");
  CHECK(steps[2].holes == 5);
  CHECK(steps[2].from_head_and_foot == Length::inches(3, 4));
  CHECK(steps[3].holes == 1);
  CHECK(steps[3].from_spine == Length::inches(3, 8));
  CHECK(steps[4].corners == 2);
  CHECK(steps[4].radius == Length::inches(1, 4));
  CHECK(steps[5].text == "a yard of red thread");
  CHECK(steps[5].work.takes->value.time.milliseconds == 30'000);
  CHECK(**steps[5].work.caution == "Mind the knot.");
}

TEST_CASE("a needle wants two holes") {
  CHECK(read(small_edition("pages 4", "finish\n  sew 1 hole, 1in from head and foot\n")).found() ==
        "error almanac.bodkin:20:7 number-too-small\n");
}

TEST_CASE("holes stand evenly between the outer two, or down the whole page") {
  const std::vector<FinishStep> steps = steps_of("  sew 3 holes, 1in from head and foot\n"
                                                 "  punch 2 holes, 1/2in from spine\n"
                                                 "  punch 1 hole, 1/2in from spine\n");
  const Length high = Length::inches(8);
  CHECK(places_down(steps[0], 3, high) ==
        std::vector{Length::inches(1), Length::inches(4), Length::inches(7)});
  CHECK(places_down(steps[1], 2, high) == std::vector{Length::inches(2), Length::inches(6)});
  CHECK(places_down(steps[2], 1, high) == std::vector{Length::inches(4)});
}

TEST_CASE("a step after the knife is measured on the trimmed copy") {
  const std::vector<FinishStep> steps = steps_of(
      "  trim fore-edge 1/8in, head 1/4in, foot 1/4in\n  punch 1 hole, 1/2in from spine\n");
  CHECK(height_at(steps, 0, Length::inches(8)) == Length::inches(8));
  CHECK(height_at(steps, 1, Length::inches(8)) == Length::inches(15, 2));
}

// The usual cautions of the trade, from memory: every tool that cuts, pricks or sticks has one.
TEST_CASE("blades, needles, punches and glue carry their usual caution, paper alone none") {
  for (const StepKind kind : {StepKind::trim, StepKind::cut, StepKind::sew, StepKind::punch,
                              StepKind::glue, StepKind::round})
    CHECK(usual_caution(kind).ends_with("."));
  for (const StepKind kind : {StepKind::collate, StepKind::crease, StepKind::fold, StepKind::tie})
    CHECK(usual_caution(kind).empty());
}
