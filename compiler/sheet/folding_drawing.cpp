#include "sheet/folding_drawing.hpp"

#include "sheet/crossing.hpp"
#include "sheet/fold.hpp"
#include "sheet/steps_text.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace bodkin {
namespace {

// A strip is shown as its first sheet.
constexpr std::size_t most_stages = 12;

struct Labels {
  // By panel as laid and by side: the page, and which way its head points on the sheet.
  std::map<std::pair<int, bool>, std::pair<int, Toward>> pages;
};

Labels labels_of(const PagesMet &met) {
  Labels labels;
  for (std::size_t i = 0; i < met.pages.size(); ++i)
    labels.pages[{met.pages[i].panel, met.pages[i].front}] = {static_cast<int>(i) + 1,
                                                              met.pages[i].head};
  return labels;
}

DrawnPanel panel_on_top(const FoldedPaper &paper, int cell, std::size_t layers,
                        const Labels &labels) {
  const PaperCell &place = paper.at(cell);
  DrawnPanel panel;
  panel.left = place.x - paper.left;
  panel.top = place.y - paper.top;
  panel.layers = static_cast<int>(layers);
  panel.front = place.front_up();
  const int number = paper.panel_of(cell);
  const auto page = labels.pages.find({number, place.front_up()});
  if (page != labels.pages.end()) {
    panel.label = std::to_string(page->second.first);
    panel.turn = turn_of(place.on_sheet(page->second.second));
  } else if (labels.pages.empty()) {
    panel.label = fmt::format("{}.", number + 1);
  }
  return panel;
}

// Cells of one panel that lie side by side are one box.
std::vector<DrawnPanel> panels_on_top(const FoldedPaper &paper, const Labels &labels,
                                      const std::set<int> &at_fault) {
  std::map<std::pair<int, int>, DrawnPanel> panels; // by panel and layers
  for (const CellPile &pile : paper.piles) {
    if (pile.empty())
      continue;
    DrawnPanel cell = panel_on_top(paper, pile.back(), pile.size(), labels);
    for (const int below : pile)
      cell.at_fault = cell.at_fault || at_fault.count(paper.panel_of(below)) > 0;
    const auto [found, added] = panels.insert({{paper.panel_of(pile.back()), cell.layers}, cell});
    if (added)
      continue;
    DrawnPanel &box = found->second;
    const int right = std::max(box.left + box.width, cell.left + 1);
    const int foot = std::max(box.top + box.height, cell.top + 1);
    box.left = std::min(box.left, cell.left);
    box.top = std::min(box.top, cell.top);
    box.width = right - box.left;
    box.height = foot - box.top;
    box.at_fault = box.at_fault || cell.at_fault;
  }
  std::vector<DrawnPanel> result;
  result.reserve(panels.size());
  for (const auto &[key, panel] : panels)
    result.push_back(panel);
  return result;
}

// Lines of the flat sheet, in cells: folds as they will be in the end, and slits.
std::vector<DrawnLine> lines_of(const FoldedPaper &flat, const FoldedPaper &folded) {
  std::vector<DrawnLine> lines;
  const std::vector<int> levels = folded.levels();
  std::set<std::pair<int, int>> joined;
  const auto between = [&](int a, int b, DrawnLine::Kind kind) {
    const PaperCell &one = flat.at(a), &other = flat.at(b);
    return one.y == other.y ? DrawnLine{kind, other.x, other.y, other.x, other.y + 1}
                            : DrawnLine{kind, other.x, other.y, other.x + 1, other.y};
  };
  for (const Joint &joint : folded.joints) {
    joined.insert({joint.a, joint.b});
    if (joint.step < 0)
      continue;
    const bool lower =
        levels[static_cast<std::size_t>(joint.a)] < levels[static_cast<std::size_t>(joint.b)];
    lines.push_back(between(joint.a, joint.b,
                            folded.at(joint.a).front_up() == lower ? DrawnLine::Kind::valley
                                                                   : DrawnLine::Kind::mountain));
  }
  for (int cell = 0; cell < static_cast<int>(flat.cells.size()); ++cell)
    for (const int other : {cell + 1, cell + flat.columns}) {
      const bool beside = other == cell + 1 ? (cell + 1) % flat.columns != 0
                                            : other < static_cast<int>(flat.cells.size());
      if (beside && joined.count({cell, other}) == 0)
        lines.push_back(between(cell, other, DrawnLine::Kind::slit));
    }
  return lines;
}

DrawnStage stage_of(const FoldedPaper &paper, std::string caption, const Labels &labels,
                    const std::set<int> &at_fault) {
  return {
      std::move(caption), paper.width, paper.height, panels_on_top(paper, labels, at_fault), {}};
}

// The panels that stop the paper at the step after the last stage, or that no reader finds.
std::set<int> faults_of(const Folding &folding, std::vector<FoldedPaper> &stages) {
  std::set<int> panels;
  if (const auto loose = panel_cut_off(stages[0]))
    return {*loose};
  for (std::size_t i = 0; i < stages.size(); ++i)
    if (const auto clash = paper_through_paper(stages[i])) {
      stages.resize(i + 1);
      return {clash->a, clash->b, clash->c, clash->d};
    }
  if (stages.size() <= folding.steps.size()) {
    FoldedPaper next = stages.back();
    const Folded folded =
        do_step(next, folding.steps[stages.size() - 1], static_cast<int>(stages.size()) - 1);
    if (folded.panel >= 0)
      panels.insert(folded.panel);
  }
  return panels;
}

} // namespace

FoldingDrawing draw_folding(const Folding &folding) {
  FoldingDrawing drawing;
  std::vector<FoldedPaper> stages = stages_of(folding);
  if (stages.empty())
    return drawing;
  Problems problems;
  const PagesMet met = pages_met(folding, problems);
  std::set<int> at_fault;
  if (!problems.empty()) {
    drawing.trouble = problems.front().message;
    at_fault = faults_of(folding, stages);
    if (met.panel >= 0)
      at_fault.insert(met.panel);
  }
  const bool read = problems.empty();
  if (read && !fold(folding, problems)) // `front` and `back` that cannot be
    drawing.trouble = problems.front().message;
  const Labels labels = read ? labels_of(met) : Labels{};
  for (std::size_t i = 0; i < stages.size() && i < most_stages; ++i)
    drawing.stages.push_back(
        stage_of(stages[i], i == 0 ? "flat" : step_in_words(folding.steps[i - 1]), labels,
                 i + 1 == stages.size() || i == 0 ? at_fault : std::set<int>{}));
  drawing.stages[0].lines = lines_of(stages[0], stages.back());
  return drawing;
}

} // namespace bodkin
