// What opening the folded paper shows to be wrong with its pages.
#include "sheet/fold_problems.hpp"
#include "sheet/fold_words.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {

Problem not_read(const Folding &folding, const PagesMet &met) {
  const Range range = folding.steps.empty() ? folding.range : folding.steps.back().range;
  const std::string panel = met.panel >= 0 ? panel_name(folding, met.panel) : "";
  if (met.fault == PagesMet::Fault::not_held) {
    Problem problem =
        paper_trouble(range,
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
    return folding_cannot_be(
        range, "the panels do not lie all on one place",
        "leaves that turn about a spine are one pile, each panel as large as a page");
  if (met.fault == PagesMet::Fault::not_pasted)
    return folding_cannot_be(
        *folding.pasted, "the ends of the strip do not come to lie on each other",
        "paste holds the first panel and the last together where they lie back to "
        "back in the folded pile");
  const bool hidden = met.fault == PagesMet::Fault::out_of_sight;
  Problem problem = paper_trouble(
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
  Problem problem =
      paper_trouble(said.from.somewhere() ? said.from : folding.range,
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
  Problem problem = paper_trouble(
      said.from,
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
  return folding_cannot_be(
      folding.front.from.somewhere() ? folding.front.from : folding.back.from,
      fmt::format("opening the leaves shows page {} where page {} is told", shown, page),
      "where leaves turn about a spine, folding alone settles the order; `front` and `back` speak "
      "only for what is unfolded");
}

Problem strip_upside_down(const Folding &folding) {
  Problem problem = folding_cannot_be(
      folding.tab->range, "the strip does not begin at its left end with its front up",
      "sheets glued end to end are numbered from the end that is read first, and the tab is at "
      "the other");
  problem.type = {{"fold back and forth", "which lays the first panel on top"}};
  return problem;
}

} // namespace bodkin
