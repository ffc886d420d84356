#include "sheet/steps_text.hpp"

#include "edition/folding_slips.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace bodkin {
namespace {

std::string numbered(std::string_view what, int first, int last) {
  return first == last ? fmt::format("{} {}", what, first)
                       : fmt::format("{}s {} to {}", what, first, last);
}

std::string steps_text(const FoldedSheet &folded, const Shares &shares) {
  std::string text;
  for (const FoldStep &step : folded.steps) {
    const bool push = step.kind == FoldKind::ends_together;
    text += fmt::format("{}{}{}", text.empty() ? "" : ", then ",
                        !push && text.empty() ? "fold " : "", step_in_words(step, shares));
  }
  return text;
}

std::string gathering_text(const Edition &edition, const Imposition &imposition) {
  const Folding &folding = *edition.folding;
  if (imposition.sheets.size() < 2 || folding.tab)
    return "";
  if (*folding.gather != Gather::nested)
    return fmt::format("Lay the {}sheets one after another, sheet 1 first.\n",
                       folding.steps.empty() ? "" : "folded ");
  if (imposition.sheets.front().section == imposition.sheets.back().section)
    return "Nest the folded sheets one in another, sheet 1 outermost.\n";
  std::string text;
  for (std::size_t first = 0; first < imposition.sheets.size();) {
    std::vector<int> numbers;
    const int section = imposition.sheets[first].section;
    for (; first < imposition.sheets.size() && imposition.sheets[first].section == section; ++first)
      numbers.push_back(imposition.sheets[first].number);
    text += fmt::format("{} {}", text.empty() ? "Nest" : ",", spoken::sheets_listed(numbers));
  }
  text += ", each time the lower number outside";
  return text + (folding.back_to_back
                     ? ". Turn the second book over like a leaf and lay the two back to back: each "
                       "is read from its own front.\n"
                     : "; lay these sections one after another.\n");
}

std::string_view edge_name(Toward edge) {
  switch (edge) {
  case Toward::up:
    return "head";
  case Toward::down:
    return "foot";
  case Toward::right:
    return "fore-edge";
  case Toward::left:
    break;
  }
  return "spine";
}

std::string opening_text(const FoldedSheet &folded) {
  std::string edges;
  for (const Toward edge : folded.cut_open)
    edges += fmt::format("{}{}", edges.empty() ? "" : " and ", edge_name(edge));
  return edges.empty() ? edges
                       : fmt::format("Folds at the {} are cut open, by the trim or with a paper "
                                     "knife away from your fingers.\n",
                                     edges);
}

std::string binding_text(const Edition &edition, const FoldedSheet &folded) {
  if (!folded.bound_at_side)
    return "";
  const Folding &folding = *edition.folding;
  if (!folding.holes)
    return "Bind the pile at its left edge, through all leaves.\n";
  return fmt::format("Pierce {} holes through the pile, {} from its left edge, {} from head and "
                     "foot, and sew. Pierce away from your hand, on a board.\n",
                     folding.holes->count, written(folding.holes->from_spine, edition.ruler),
                     written(folding.holes->from_head_and_foot, edition.ruler));
}

std::string spine_text(const FoldedSheet &folded) {
  if (!folded.leaves_turn() || folded.bound_at_side)
    return "";
  if (folded.steps.back().kind == FoldKind::ends_together)
    return " The spine is where all leaves meet.";
  return folded.steps.size() == 1 ? " The fold is the spine." : " The last fold is the spine.";
}

} // namespace

Shares shares_of(const Folding &folding, const Imposition &imposition, Ruler ruler) {
  Shares shares{{}, {}, ruler};
  if (imposition.sheets.empty() || imposition.sheets.front().up > 1)
    return shares;
  const Size sheet = imposition.sheets.front().size;
  const auto one = [](const std::vector<int> &all, Length whole) {
    const int sum = std::accumulate(all.begin(), all.end(), 0);
    return sum > 0 ? std::optional(whole / sum) : std::nullopt;
  };
  shares.across = one(folding.widths, sheet.width);
  shares.down = one(folding.heights, sheet.height);
  return shares;
}

std::string step_in_words(const FoldStep &step, const Shares &shares) {
  switch (step.kind) {
  case FoldKind::back_and_forth:
    return step.from == 1
               ? "back and forth, the first panel on top"
               : fmt::format("back and forth from panel {} on, that panel on top", step.from);
  case FoldKind::ends_together:
    return "push the ends together until the slit opens, and wrap the leaves round";
  case FoldKind::over_a_line:
    break;
  }
  const std::string layers = step.layers == 0 ? ""
                                              : fmt::format(", {} {} from {}", step.layers,
                                                            step.layers == 1 ? "layer" : "layers",
                                                            step.under ? "below" : "above");
  const bool sideways = step.moving == Part::left || step.moving == Part::right;
  const std::optional<Length> &share = sideways ? shares.across : shares.down;
  return fmt::format("{} {} {}{}{}", word_of(step.moving), step.under ? "under" : "over",
                     word_of(opposite(step.moving)),
                     step.panels == 0 ? ""
                     : share
                         ? fmt::format(", {} of it", written(*share * step.panels, shares.ruler))
                     : step.panels == 1 ? " by 1 panel"
                                        : fmt::format(" by {} panels", step.panels),
                     layers);
}

std::string slits_in_words(const FoldedSheet &folded) {
  std::string text;
  for (const SheetLine &slit : folded.slits_laid)
    text += fmt::format("{}between {} {} and {}, along {}", text.empty() ? "" : ", ",
                        slit.upright ? "columns" : "rows", slit.at, slit.at + 1,
                        numbered(slit.upright ? "row" : "column", slit.first + 1, slit.last));
  return text;
}

std::string strip_in_words(const Edition &edition, const FoldedSheet &folded,
                           const Imposition &imposition) {
  if (!folded.tab || imposition.sheets.size() < 2)
    return "";
  return fmt::format("Glue the sheets end to end, sheet 1 first: each on the tab ({} at its {}) of "
                     "the one before. The last tab is cut off.",
                     written(folded.tab->width, edition.ruler), word_of(folded.tab->at));
}

std::string folding_in_words(const Edition &edition, const FoldedSheet &folded,
                             const Imposition &imposition, const FoldingTold &told) {
  std::string text = "\n";
  if (const std::string strip = strip_in_words(edition, folded, imposition);
      !strip.empty() && !told.strip)
    text += strip + "\n";
  const std::string slits = told.slits ? "" : slits_in_words(folded);
  if (!folded.steps.empty())
    text +=
        fmt::format("To fold {}, lay it as its {} is drawn here, that side up; {}{}.{}\n",
                    folded.tab && imposition.sheets.size() > 1 ? "the strip" : "a sheet",
                    folded.front_up ? "front" : "back", slits.empty() ? "" : "cut " + slits + "; ",
                    steps_text(folded, shares_of(*edition.folding, imposition, edition.ruler)),
                    spine_text(folded));
  text += gathering_text(edition, imposition);
  text += binding_text(edition, folded);
  if (edition.folding->pasted)
    text += "Paste the two ends of the strip together, back to back.\n";
  text += opening_text(folded);
  return text == "\n" ? "" : text;
}

} // namespace bodkin
