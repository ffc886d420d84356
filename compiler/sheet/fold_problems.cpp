#include "sheet/fold_problems.hpp"

#include "measure/limits.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem trouble(Range range, std::string message, std::string why) {
  Problem problem;
  problem.range = range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

Problem cannot_be(Range range, std::string message, std::string why) {
  Problem problem = trouble(range, std::move(message), std::move(why));
  problem.check = "folding-cannot-be";
  return problem;
}

std::string panels_in_words(int panels) {
  return fmt::format("{} {}", panels, panels == 1 ? "panel" : "panels");
}

// "panel 3 of row 2", or "panel 3" where there is one row.
std::string panel_name(const Folding &folding, int panel) {
  const bool down = folding.tab && folding.tab->at == Part::bottom;
  const int columns = folding.tab && !down ? 0 : folding.columns;
  if (columns == 0 || (folding.rows == 1 && !down))
    return fmt::format("panel {}", panel + 1);
  if (columns == 1)
    return fmt::format("panel {} from the top", panel + 1);
  return fmt::format("panel {} of row {}", panel % columns + 1, panel / columns + 1);
}

Problem no_half(const Folding &folding, const FoldStep &step, const FoldedPaper &paper) {
  const bool side = sideways(step.moving);
  const int panels = side ? paper.width : paper.height;
  Problem problem = cannot_be(
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
  Problem problem = cannot_be(
      step.range, "these panels are no strip that folds back and forth",
      fmt::format("a strip has two ends, and each panel between them hangs on two others; {} does "
                  "not; slits that reach in from alternate sides make a sheet one long strip",
                  panel_name(folding, panel)));
  problem.type = {{spoken::fact("cut", "between rows 1 and 2, columns 1 to 3"),
                   "before the fold, with your own rows and columns"}};
  return problem;
}

Problem no_slit(const Folding &folding, const FoldStep &step) {
  Problem problem = cannot_be(
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
  return cannot_be(
      folding.panels_range.somewhere() ? folding.panels_range : folding.range,
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
  problem.type = {{"fold left over right", ""},
                  {"spine left", "for single leaves, stapled, sewn or glued at that edge"}};
  return problem;
}

Problem slit_across_fold(const Folding &folding, const Slit &slit) {
  Problem problem = trouble(
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
  Problem problem = trouble(
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
    return cannot_be(step.range,
                     fmt::format("no paper lies beyond {} here", panels_in_words(extent)),
                     fmt::format("the sheet lies {} by {} before this fold, and a fold leaves some "
                                 "paper where it is",
                                 paper.width, paper.height));
  case Hindrance::through_panel:
    return cannot_be(
        step.range,
        fmt::format("this fold creases {} in the middle", panel_name(folding, folded.panel)),
        "a page is one panel, whole; folds run along the lines between panels");
  case Hindrance::no_strip:
    return no_strip(folding, step, folded.panel);
  case Hindrance::no_such_start:
    return cannot_be(step.range, fmt::format("the strip has no panel after panel {}", step.from),
                     "back and forth lays the panels that follow under this one");
  case Hindrance::no_slit:
    return no_slit(folding, step);
  case Hindrance::slit_uneven:
    return cannot_be(step.range, "the slit runs beside an odd number of panels",
                     "pushed together, the paper beside it bends at its middle, which must be a "
                     "line between two panels");
  case Hindrance::no_ends:
    break;
  }
  return cannot_be(step.range, "the slit reaches the end of the strip",
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
  Problem problem = trouble(step.range, "this step would take paper through paper", std::move(why));
  problem.check = "paper-through-paper";
  problem.type = {{"", "fold a sheet along with the lines and mend the one where it stops; `bodkin "
                       "sheets --svg` draws the stages"}};
  return problem;
}

Problem not_folded_down(const Folding &folding, const FoldedPaper &paper) {
  Problem problem = cannot_be(folding.range,
                              fmt::format("after its last fold {} still lies {} by {} panels",
                                          folding.name, paper.width, paper.height),
                              "a page is one panel: the folds in turn must bring the sheet down "
                              "to one");
  problem.type = {{paper.width > 1 ? "fold left over right" : "fold top over bottom",
                   "once more, before the fold that makes the spine"}};
  return problem;
}

Problem not_read(const Folding &folding, const PagesMet &met) {
  const Range range = folding.steps.empty() ? folding.range : folding.steps.back().range;
  const std::string panel = met.panel >= 0 ? panel_name(folding, met.panel) : "";
  if (met.fault == PagesMet::Fault::not_held) {
    Problem problem =
        trouble(range,
                fmt::format("{} hangs in no fold at the spine and would fall out of "
                            "the book",
                            panel),
                folding.spine ? "the spine is where `spine` says, and no fold lies there"
                              : "the spine is the crease of the last fold; its leaves turn "
                                "about it");
    problem.check = "leaf-not-held";
    problem.type = {{"opens fold by fold", "if a reader unfolds it instead of turning leaves"}};
    return problem;
  }
  if (met.fault == PagesMet::Fault::not_one_pile)
    return cannot_be(range, "the panels do not lie all on one place",
                     "leaves that turn about a spine are one pile, each panel as large as a page");
  if (met.fault == PagesMet::Fault::not_pasted)
    return cannot_be(*folding.pasted, "the ends of the strip do not come to lie on each other",
                     "paste holds the first panel and the last together where they lie back to "
                     "back in the folded pile");
  const bool hidden = met.fault == PagesMet::Fault::out_of_sight;
  Problem problem = trouble(
      range,
      hidden ? fmt::format("the page on {} lies inside a fold that no reader opens", panel)
             : fmt::format("the reader would see the back of {}, which holds no page", panel),
      "the folding prints one side (`sides 1`), so every opening must show that side and every "
      "fold that stays shut must hide the other");
  problem.check = "page-out-of-sight";
  problem.type = {{"sides      2", "if pages stand on both sides and folds are cut open"}};
  if (!hidden && !folding.pasted)
    problem.type.insert(problem.type.begin(),
                        {"paste ends back to back", "if these are the two ends of a strip"});
  return problem;
}

Problem pages_miscounted(const Folding &folding, bool front, int wanted) {
  const Known<std::vector<int>> &said = front ? folding.front : folding.back;
  Problem problem = trouble(said.from.somewhere() ? said.from : folding.range,
                            fmt::format("the {} has {}, and {} {} told", front ? "front" : "back",
                                        panels_in_words(wanted), said->size(),
                                        said->size() == 1 ? "page is" : "pages are"),
                            "every panel holds one page, told row by row as seen");
  problem.check = "page-claimed-twice";
  return problem;
}

// A page that neither side tells, of those that the sheet holds.
static int page_left_over(const Folding &folding, int count) {
  for (int page = 1; page <= count; ++page)
    if (std::count(folding.front->begin(), folding.front->end(), page) +
            std::count(folding.back->begin(), folding.back->end(), page) ==
        0)
      return page;
  return 0;
}

Problem page_claimed(const Folding &folding, bool front, std::size_t at, int count) {
  const Known<std::vector<int>> &said = front ? folding.front : folding.back;
  const int page = said.value[at], other = page_left_over(folding, count);
  const bool twice = page >= 1 && page <= count;
  Problem problem =
      trouble(said.from,
              twice ? fmt::format("page {} is told of two panels", page)
                    : fmt::format("page {} is none of this sheet's", page),
              twice ? fmt::format("one page cannot lie in two places, and page {} has none", other)
                    : fmt::format("a sheet of this folding holds pages 1 to {}", count));
  problem.check = "page-claimed-twice";
  std::string line;
  for (std::size_t i = 0; i < said->size(); ++i)
    line += fmt::format("{}{}", line.empty() ? "" : ", ", i == at ? other : said.value[i]);
  problem.type = {{spoken::fact(front ? "front" : "back", line), ""}};
  return problem;
}

Problem said_otherwise(const Folding &folding, int page, int shown) {
  return cannot_be(
      folding.front.from.somewhere() ? folding.front.from : folding.back.from,
      fmt::format("opening the leaves shows page {} where page {} is told", shown, page),
      "where leaves turn about a spine, folding alone settles the order; `front` and `back` speak "
      "only for what is unfolded");
}

Problem strip_upside_down(const Folding &folding) {
  Problem problem = cannot_be(
      folding.tab->range, "the strip does not begin at its left end with its front up",
      "sheets glued end to end are numbered from the end that is read first, and the tab is at "
      "the other");
  problem.type = {{"fold back and forth", "which lays the first panel on top"}};
  return problem;
}

} // namespace bodkin
