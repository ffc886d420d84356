#include "edition/work.hpp"

#include "edition/own_runs.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

When when_of(std::string_view word) {
  if (word == "flat")
    return When::flat;
  if (word == "folded")
    return When::folded;
  return word == "bound" ? When::bound : When::trimmed;
}

StepKind step_of(std::string_view word) {
  for (const StepKind kind :
       {StepKind::collate, StepKind::crease, StepKind::staple, StepKind::trim, StepKind::sew,
        StepKind::punch, StepKind::cut, StepKind::glue, StepKind::round, StepKind::tie,
        StepKind::dry, StepKind::press, StepKind::add, StepKind::pack})
    if (name_of(kind) == word)
      return kind;
  return StepKind::fold;
}

StepOn on_of(std::string_view word) {
  for (const StepOn on : {StepOn::sheets, StepOn::slit, StepOn::folds, StepOn::window,
                          StepOn::spine, StepOn::cover, StepOn::tabs, StepOn::other})
    if (name_of(on) == word)
      return on;
  return StepOn::unsaid;
}

void take_staple(Reader &reader, FactLine line, FinishStep &step) {
  // A hand that drives more than fifty staples into a fold is sewing.
  constexpr std::int64_t most = 50;
  if (const auto count = count_in(reader, line, "count", 1, "a staple is one at the least"))
    step.staples = static_cast<int>(std::min(count->value, most));
  if (const auto leg = length_in(reader, line, "leg", false)) {
    step.leg = leg->value;
    step.leg_range = leg->from;
  }
  if (const auto place = length_in(reader, line, "place", true))
    step.from_head_and_foot = place->value;
}

void take_holes(Reader &reader, FactLine line, FinishStep &step) {
  // So many in a line are a perforation, and no needle's work.
  constexpr std::int64_t most = 200;
  const bool sewn = step.kind == StepKind::sew;
  if (const auto count = count_in(reader, line, "count", sewn ? 2 : 1,
                                  sewn ? "a thread goes in at one hole and comes out at another"
                                       : "a punch makes one hole at the least"))
    step.holes = static_cast<int>(std::min(count->value, most));
  if (const auto inset = length_in(reader, line, "inset", false))
    step.from_spine = inset->value;
  if (const auto place = length_in(reader, line, "place", false)) {
    step.from_head_and_foot = place->value;
    step.place_written = true;
  }
}

void take_corners(Reader &reader, FactLine line, FinishStep &step) {
  constexpr std::int64_t most = 4;
  if (const auto count = count_in(reader, line, "count", 1, "a copy has four corners to round"))
    step.corners = static_cast<int>(std::min(count->value, most));
  if (const auto radius = length_in(reader, line, "radius", false))
    step.radius = radius->value;
}

void take_trim(Reader &reader, FactLine line, FinishStep &step) {
  const auto cut = [&](std::string_view edge) {
    const auto width = length_in(reader, line, edge, true);
    return width ? width->value : Length{};
  };
  step.fore_edge = cut("fore-edge");
  step.head = cut("head");
  step.foot = cut("foot");
}

void take_waiting(Reader &reader, FactLine line, FinishStep &step) {
  const auto time = value_in<language::Time>(line, "time");
  if (time && time->value.duration.milliseconds <= 0)
    reader.report(too_small(time->from, "nothing dries and nothing is pressed in no time",
                            "the plan of an evening counts with it: what is wet cannot be stacked",
                            fmt::format("{:<10} 20 min", name_of(step.kind))));
  else if (time)
    step.waits = time->value.duration;
}

FinishStep finish_step(Reader &reader, FactLine line) {
  FinishStep step;
  step.kind = step_of(line.word());
  step.range = line.range();
  step.keyword = line.keyword();
  step.all = line.words("what") != "cover";
  if (step.kind == StepKind::staple)
    take_staple(reader, line, step);
  if (step.kind == StepKind::trim)
    take_trim(reader, line, step);
  if (step.kind == StepKind::sew || step.kind == StepKind::punch)
    take_holes(reader, line, step);
  if (step.kind == StepKind::round)
    take_corners(reader, line, step);
  if (step.kind == StepKind::cut || step.kind == StepKind::glue)
    step.on = on_of(line.words("what"));
  if (step.kind == StepKind::dry || step.kind == StepKind::press)
    take_waiting(reader, line, step);
  step.text = line.words("text");
  step.work = work_of(reader, Facts(line));
  return step;
}

} // namespace

Takes takes_of(const language::Time &time) {
  const TimePer per = time.per == language::TimePer::sheet  ? TimePer::sheet
                      : time.per == language::TimePer::once ? TimePer::once
                                                            : TimePer::copy;
  return {time.duration, per};
}

namespace {

// Pay by the hour of work that takes no time would come to nothing.
Problem no_hours(const Reader &reader, Range rate) {
  return {.check = "priced-by-what",
          .range = rate,
          .message =
              fmt::format("{}, and nothing says how long it takes", reader.sources.text(rate)),
          .why = "what is paid by the hour costs its time; without any it would be free",
          .type = {{"takes      20 s a copy", "beside the costs, with your own time"}}};
}

bool may_be_kept(const Rate &rate) {
  return rate.per == Per::once || rate.per == Per::run || rate.per == Per::plate ||
         rate.per == Per::pass;
}

Problem kept_and_used_up(const Reader &reader, FactLine line, const Known<Rate> &rate) {
  return {.check = "priced-by-what",
          .range = rate.from,
          .message = fmt::format("{} is paid again and again, and nothing of it is kept",
                                 reader.sources.text(rate.from)),
          .why = "a tool that is kept, such as a stamp, is paid once and costs nothing in a later "
                 "printing; what each copy uses up is bought anew",
          .type = {{fmt::format("costs      {}", reader.sources.text(rate.from)),
                    "and what the tool itself cost on a line of its own: `costs $6 once, kept`"}},
          .edits = {{line.range(), fmt::format("costs {}", reader.sources.text(rate.from))}}};
}

void take_costs(Reader &reader, FactLine line, bool timed, Work &work) {
  const auto rate = rate_in(reader, line, "costs");
  if (!rate)
    return;
  if (rate->value.per == Per::hour && !timed)
    return reader.report(no_hours(reader, rate->from));
  const bool kept = line.has("kept");
  if (kept && !may_be_kept(**rate))
    reader.report(kept_and_used_up(reader, line, *rate));
  const bool later = reader.edition.impression && **reader.edition.impression > 1;
  (kept && later && may_be_kept(**rate) ? work.kept : work.costs).push_back(*rate);
}

} // namespace

Work work_of(Reader &reader, const Facts &facts) {
  Work work;
  if (const auto time = value_in<language::Time>(facts.find("takes"), "takes")) {
    if (time->value.duration.milliseconds < 0)
      reader.report(too_small(time->from, "no work takes less than no time",
                              "minutes of hand work are added up for the whole run",
                              "takes      20 s a copy"));
    else
      work.takes = known(takes_of(time->value), time->from);
  }
  const bool timed = static_cast<bool>(facts.find("takes"));
  facts.each("costs", [&](FactLine line) { take_costs(reader, line, timed, work); });
  work.caution = text_in(facts.find("caution"), "caution");
  if (const auto when = text_in(facts.find("when"), "when"))
    work.when = known(when_of(when->value), when->from);
  work.only = only_in(reader, facts.find("only"));
  work.mass = value_in<Mass>(facts.find("mass"), "mass");
  return work;
}

std::vector<FinishStep> finish_steps(Reader &reader, FactLine finish) {
  std::vector<FinishStep> steps;
  finish.each_child([&](FactLine step) { steps.push_back(finish_step(reader, step)); });
  return steps;
}

void take_finish(Reader &reader) {
  each_line(*reader.strongest_first.front(), [&](FactLine line) {
    if (line.word() != "finish")
      return;
    if (!reader.edition.finish_range.somewhere())
      reader.edition.finish_range = line.range();
    for (FinishStep &step : finish_steps(reader, line))
      reader.edition.finish.push_back(std::move(step));
  });
}

} // namespace bodkin
