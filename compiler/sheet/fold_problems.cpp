#include "sheet/fold_problems.hpp"

#include "measure/limits.hpp"
#include "sheet/fold_words.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem no_half(const Folding &folding, const FoldStep &step, const FoldedPaper &paper) {
  const bool side = sideways(step.moving);
  const int panels = side ? paper.width : paper.height;
  Problem problem = folding_cannot_be(
      step.range,
      fmt::format("the sheet lies {} {} here, and a fold lays one half on the other",
                  panels_in_words(panels), side ? "across" : "down"),
      fmt::format("{} starts with {} by {} panels; before this fold they lie {} by {}, and the "
                  "middle of {} is no line between two panels",
                  folding.name, folding.columns, folding.rows, paper.width, paper.height, panels));
  if (panels > 1 && !step.under)
    problem.type.push_back({spoken::fact("fold", fmt::format("{} over {}, 1 panel",
                                                             step.moving == Part::left    ? "left"
                                                             : step.moving == Part::right ? "right"
                                                             : step.moving == Part::top   ? "top"
                                                                                        : "bottom",
                                                             step.moving == Part::left    ? "right"
                                                             : step.moving == Part::right ? "left"
                                                             : step.moving == Part::top   ? "bottom"
                                                                                          : "top")),
                            "if one panel is folded in"});
  const int all = side ? folding.columns : folding.rows;
  const int other = panels == 1 ? all * 2 : all / panels * (panels + 1);
  problem.type.push_back(
      {fmt::format("panels {} by {}", side ? other : folding.columns, side ? folding.rows : other),
       "or take this fold out"});
  return problem;
}

Problem no_strip(const Folding &folding, const FoldStep &step, int panel) {
  Problem problem = folding_cannot_be(
      step.range, "these panels are no strip that folds back and forth",
      fmt::format("a strip has two ends, and each panel between them hangs on two others; {} does "
                  "not; slits that reach in from alternate sides make a sheet one long strip",
                  panel_name(folding, panel)));
  problem.type = {{spoken::fact("cut", "between rows 1 and 2, columns 1 to 3"),
                   "before the fold, with your own rows and columns"}};
  return problem;
}

Problem no_slit(const Folding &folding, const FoldStep &step) {
  Problem problem = folding_cannot_be(
      step.range, "pushing the ends together opens nothing",
      fmt::format("{} has no slit between its ends: a strip of two layers, slit along its fold in "
                  "the middle, opens there like a mouth when its ends are pushed",
                  folding.name));
  problem.type = {{spoken::fact("cut", "between rows 1 and 2, columns 2 to 3"),
                   "on a line before the folds, on 4 by 2 panels folded top under bottom"}};
  return problem;
}

} // namespace

Problem too_many_panels(const Folding &folding) {
  return folding_cannot_be(
      folding.panels_range.somewhere() ? folding.panels_range : folding.range,
      fmt::format("{} by {} panels are more than the {} that a sheet can have here",
                  folding.columns, folding.rows, limits::panels),
      "paper of any thickness folds in half seven times or so, which makes 128 panels");
}

Problem too_many_sheets(const Folding &folding) {
  return folding_cannot_be(
      folding.sheets->from,
      fmt::format("{} sheets of {} pages are more than the {} pages of the longest edition",
                  **folding.sheets, 2 * folding.columns * folding.rows, limits::pages),
      "a folding with a fixed number of sheets asks for all of them");
}

Problem never_folded(const Folding &folding) {
  Problem problem = folding_cannot_be(
      folding.range, fmt::format("{} never folds its sheet", folding.name),
      "the crease of the last fold is the spine; a flat sheet has no spine to read from");
  problem.type = {{"fold left over right", ""},
                  {"spine left", "for single leaves, stapled, sewn or glued at that edge"}};
  return problem;
}

Problem slit_across_fold(const Folding &folding, const Slit &slit) {
  Problem problem = paper_trouble(
      slit.range, "this slit comes after a fold",
      fmt::format("a slit is told on the flat sheet of {} by {} panels; once paper is folded, a "
                  "knife goes through all layers that lie there and cuts across the folds between",
                  folding.columns, folding.rows));
  problem.check = "slit-across-fold";
  problem.type = {{spoken::fact("cut", "between rows 1 and 2, columns 2 to 3"),
                   "on a line before the first fold, with your own rows and columns"}};
  if (static_cast<std::size_t>(slit.steps_before) <= folding.steps.size() && slit.steps_before > 0)
    problem.related = {{folding.steps[static_cast<std::size_t>(slit.steps_before) - 1].range,
                        "the paper is folded here"}};
  return problem;
}

Problem panel_falls_off(const Folding &folding, int panel) {
  const Range range = folding.slits.empty() ? folding.range : folding.slits.back().range;
  Problem problem = paper_trouble(
      range, fmt::format("{} falls off the sheet", panel_name(folding, panel)),
      "the slits together cut it loose; each panel must hang on another by an edge at least");
  problem.check = "panel-falls-off";
  const Slit *slit = folding.slits.empty() ? nullptr : &folding.slits.back();
  if (slit != nullptr) {
    const int beside = slit->between_rows ? folding.columns : folding.rows;
    if (beside > 1)
      problem.type = {
          {fmt::format("cut        between {} {} and {}, {} 1 to {}",
                       slit->between_rows ? "rows" : "columns", slit->after, slit->after + 1,
                       slit->between_rows ? "columns" : "rows", beside - 1),
           "so that it hangs at one end"}};
  }
  return problem;
}

Problem hindered(const Folding &folding, const FoldStep &step, const FoldedPaper &paper,
                 const Folded &folded) {
  const int extent = sideways(step.moving) ? paper.width : paper.height;
  switch (*folded.hindrance) {
  case Hindrance::no_half:
    return no_half(folding, step, paper);
  case Hindrance::nothing_there:
    return folding_cannot_be(
        step.range, fmt::format("no paper lies beyond {} here", panels_in_words(extent)),
        fmt::format("the sheet lies {} by {} before this fold, and a fold leaves some "
                    "paper where it is",
                    paper.width, paper.height));
  case Hindrance::through_panel:
    return folding_cannot_be(
        step.range,
        fmt::format("this fold creases {} in the middle", panel_name(folding, folded.panel)),
        "a page is one panel, whole; folds run along the lines between panels");
  case Hindrance::no_strip:
    return no_strip(folding, step, folded.panel);
  case Hindrance::no_such_start:
    return folding_cannot_be(step.range,
                             fmt::format("the strip has no panel after panel {}", step.from),
                             "back and forth lays the panels that follow under this one");
  case Hindrance::no_slit:
    return no_slit(folding, step);
  case Hindrance::slit_uneven:
    return folding_cannot_be(
        step.range, "the slit runs beside an odd number of panels",
        "pushed together, the paper beside it bends at its middle, which must be a "
        "line between two panels");
  case Hindrance::no_ends:
    break;
  }
  return folding_cannot_be(
      step.range, "the slit reaches the end of the strip",
      "the ends hold the two layers together while they are pushed; a panel at each "
      "end stays whole");
}

Problem through_itself(const Folding &folding, const FoldStep &step, const Clash &clash) {
  const auto joint = [&](int a, int b) {
    return fmt::format("{} and {}", panel_name(folding, a), panel_name(folding, b));
  };
  std::string why;
  switch (clash.kind) {
  case Clash::Kind::torn:
    why = fmt::format("{} hang together and would come to lie apart", joint(clash.a, clash.b));
    break;
  case Clash::Kind::interlocked:
    why = fmt::format("the fold between {} and the fold between {} would lie in each other like "
                      "links of a chain",
                      joint(clash.a, clash.b), joint(clash.c, clash.d));
    break;
  case Clash::Kind::through_fold:
    why = fmt::format("the paper from {} would go out through the fold between {}",
                      joint(clash.a, clash.b), joint(clash.c, clash.d));
    break;
  case Clash::Kind::order:
    why = fmt::format("the paper from {} would change places with the paper from {} on the way",
                      joint(clash.a, clash.b), joint(clash.c, clash.d));
    break;
  }
  Problem problem =
      paper_trouble(step.range, "this step would take paper through paper", std::move(why));
  problem.check = "paper-through-paper";
  problem.type = {{"", "fold a sheet along with the lines and mend the one where it stops; `bodkin "
                       "sheets --svg` draws the stages"}};
  return problem;
}

Problem not_folded_down(const Folding &folding, const FoldedPaper &paper) {
  Problem problem =
      folding_cannot_be(folding.range,
                        fmt::format("after its last fold {} still lies {} by {} panels",
                                    folding.name, paper.width, paper.height),
                        "a page is one panel: the folds in turn must bring the sheet down "
                        "to one");
  problem.type = {{paper.width > 1 ? "fold left over right" : "fold top over bottom",
                   "once more, before the fold that makes the spine"}};
  return problem;
}

} // namespace bodkin
