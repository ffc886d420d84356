#include "sheet/fold.hpp"

#include "measure/limits.hpp"
#include "sheet/fold_problems.hpp"
#include "sheet/settle.hpp"

#include <algorithm>

namespace bodkin {
namespace {

bool within_bounds(const Folding &folding, Problems &problems) {
  const auto most = static_cast<int>(limits::panels);
  if (folding.columns < 1 || folding.rows < 1 || folding.columns > most ||
      folding.rows > most / folding.columns) {
    problems.push_back(too_many_panels(folding));
    return false;
  }
  if (folding.sheets && **folding.sheets > limits::pages / 2 / folding.columns / folding.rows) {
    problems.push_back(too_many_sheets(folding));
    return false;
  }
  return true;
}

// Each stage proved; none where a step cannot be done.
std::optional<std::vector<FoldedPaper>> folded_through(const Folding &folding, int strip_panels,
                                                       Problems &problems) {
  for (const Slit &slit : folding.slits)
    if (slit.steps_before > 0) {
      problems.push_back(slit_across_fold(folding, slit));
      return std::nullopt;
    }
  std::vector<FoldedPaper> stages{flat_paper(folding, strip_panels)};
  if (const auto panel = panel_cut_off(stages[0])) {
    problems.push_back(panel_falls_off(folding, *panel));
    return std::nullopt;
  }
  for (const FoldStep &step : folding.steps) {
    FoldedPaper paper = stages.back();
    const Folded folded = do_step(paper, step, static_cast<int>(stages.size()) - 1);
    if (folded.hindrance) {
      problems.push_back(hindered(folding, step, stages.back(), folded));
      return std::nullopt;
    }
    if (const auto clash = paper_through_paper(paper)) {
      problems.push_back(through_itself(folding, step, *clash));
      return std::nullopt;
    }
    stages.push_back(std::move(paper));
  }
  return stages;
}

// Ends pushed together wrap round the line where the outermost layers hang together.
Toward wrapped_edge(const FoldedPaper &paper) {
  const std::vector<int> levels = paper.levels();
  const auto top = static_cast<int>(paper.piles.front().size()) - 1;
  for (const Joint &joint : paper.joints) {
    const int a = levels[static_cast<std::size_t>(joint.a)];
    const int b = levels[static_cast<std::size_t>(joint.b)];
    if (std::min(a, b) == 0 && std::max(a, b) == top)
      return paper.at(joint.a).on_sheet(joint.of_a());
  }
  return Toward::left;
}

Toward spine_edge(const Folding &folding, const FoldedPaper &paper) {
  if (folding.spine)
    return toward(**folding.spine);
  if (folding.steps.empty())
    return Toward::left;
  const FoldStep &last = folding.steps.back();
  return last.kind == FoldKind::ends_together ? wrapped_edge(paper) : toward(last.moving);
}

OpenedBy opened_by(const Folding &folding, const FoldedPaper &paper) {
  if (folding.opened)
    return **folding.opened;
  if (folding.spine || folding.steps.empty())
    return OpenedBy::leaves;
  const bool zigzag = folding.steps.back().kind == FoldKind::back_and_forth;
  return !zigzag && all_hang_at(paper, spine_edge(folding, paper)) ? OpenedBy::leaves
                                                                   : OpenedBy::folds;
}

// As small as a page: the largest share of the columns by the largest of the rows.
bool folded_down(const Folding &folding, const FoldedPaper &paper) {
  const auto most = [](const std::vector<int> &shares) {
    return shares.empty() ? 1 : *std::max_element(shares.begin(), shares.end());
  };
  return paper.width <= most(folding.widths) && paper.height <= most(folding.heights);
}

} // namespace

std::vector<FoldedPaper> stages_of(const Folding &folding) {
  std::vector<FoldedPaper> stages;
  Problems ignored;
  if (!within_bounds(folding, ignored))
    return stages;
  stages.push_back(flat_paper(folding));
  for (const FoldStep &step : folding.steps) {
    FoldedPaper paper = stages.back();
    if (do_step(paper, step, static_cast<int>(stages.size()) - 1).hindrance)
      break;
    stages.push_back(std::move(paper));
  }
  return stages;
}

namespace {

struct Proved {
  std::vector<FoldedPaper> stages; // empty: a step cannot be done
  PagesMet met;
  Binding binding;
};

bool may_stay_flat(const Folding &folding) {
  return folding.spine || (folding.opened && **folding.opened == OpenedBy::folds);
}

// With a problem where it cannot be.
Proved prove(const Folding &folding, Problems &problems, int strip_panels) {
  if (!within_bounds(folding, problems))
    return {};
  if (folding.steps.empty() && !may_stay_flat(folding)) {
    problems.push_back(never_folded(folding));
    return {};
  }
  auto stages = folded_through(folding, strip_panels, problems);
  if (!stages)
    return {};
  Proved proved{std::move(*stages), {}, {}};
  const FoldedPaper &paper = proved.stages.back();
  if (!folded_down(folding, paper)) {
    problems.push_back(not_folded_down(folding, paper));
    return proved;
  }
  Binding &binding = proved.binding;
  binding.opened = opened_by(folding, paper);
  binding.spine = spine_edge(folding, paper);
  binding.at_side = folding.spine && !leaves_hang_at(paper, binding.spine, folding.one_side);
  const ReadingRules rules{folding.one_side, binding.at_side, folding.pasted.has_value()};
  proved.met = binding.opened == OpenedBy::leaves ? read_leaves(paper, binding.spine, rules)
                                                  : read_folds(proved.stages, rules);
  if (proved.met.fault != PagesMet::Fault::none)
    problems.push_back(not_read(folding, proved.met));
  return proved;
}

} // namespace

PagesMet pages_met(const Folding &folding, Problems &problems) {
  return prove(folding, problems, 0).met;
}

std::optional<FoldedSheet> fold(const Folding &folding, Problems &problems, int strip_panels) {
  const std::size_t before = problems.size();
  const Proved proved = prove(folding, problems, strip_panels);
  if (problems.size() > before)
    return std::nullopt;
  auto sheet = settled(folding, proved.stages.back(), proved.met, proved.binding, problems);
  // What goes back and forth, or stands out when its ends are pushed together, gives way.
  if (sheet && std::all_of(folding.steps.begin(), folding.steps.end(),
                           [](const FoldStep &step) { return step.kind == FoldKind::over_a_line; }))
    sheet->folded_in = folded_in(proved.stages.back());
  return sheet;
}

} // namespace bodkin
