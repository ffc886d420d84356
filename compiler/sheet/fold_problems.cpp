#include "sheet/fold_problems.hpp"

#include "measure/limits.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem cannot_be(Range range, std::string message, std::string why) {
  Problem problem;
  problem.check = "folding-cannot-be";
  problem.range = range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

} // namespace

Problem too_many_panels(const Folding &folding) {
  return cannot_be(
      folding.range,
      fmt::format("{} by {} panels are more than the {} that a sheet can have here",
                  folding.columns, folding.rows, limits::panels),
      "paper of any thickness folds in half seven times or so, which makes 128 panels");
}

Problem too_many_sheets(const Folding &folding) {
  return cannot_be(
      folding.sheets->from,
      fmt::format("{} sheets of {} pages are more than the {} pages of the longest edition",
                  **folding.sheets, 2 * folding.columns * folding.rows, limits::pages),
      "a folding with a fixed number of sheets asks for all of them");
}

Problem never_folded(const Folding &folding) {
  Problem problem =
      cannot_be(folding.range, fmt::format("{} never folds its sheet", folding.name),
                "the crease of the last fold is the spine; a flat sheet has no spine to read from");
  problem.type = {{"fold left over right", ""}};
  return problem;
}

Problem no_half(const Folding &folding, const FoldStep &step, int columns, int rows) {
  const bool sideways = step.moving == Part::left || step.moving == Part::right;
  const int panels = sideways ? columns : rows;
  Problem problem = cannot_be(
      step.range,
      fmt::format("the sheet lies {} {} {} here, and a fold lays one half on the other", panels,
                  panels == 1 ? "panel" : "panels", sideways ? "across" : "down"),
      fmt::format(
          "{} starts with {} by {} panels; before this fold they lie {} by {}, and the middle "
          "of {} is no line between two panels",
          folding.name, folding.columns, folding.rows, columns, rows, panels));
  const int other = panels == 1
                        ? (sideways ? folding.columns : folding.rows) * 2
                        : (sideways ? folding.columns : folding.rows) / panels * (panels + 1);
  problem.type = {{fmt::format("panels {} by {}", sideways ? other : folding.columns,
                               sideways ? folding.rows : other),
                   "or take this fold out"}};
  return problem;
}

Problem not_folded_down(const Folding &folding, int columns, int rows) {
  Problem problem = cannot_be(
      folding.range,
      fmt::format("after its last fold {} still lies {} by {} panels", folding.name, columns, rows),
      "a page is one panel: the folds in turn must bring the sheet down to one");
  problem.type = {{columns > 1 ? "fold left over right" : "fold top over bottom",
                   "once more, before the fold that makes the spine"}};
  return problem;
}

} // namespace bodkin
