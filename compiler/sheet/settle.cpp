#include "sheet/settle.hpp"

#include "sheet/fold_problems.hpp"
#include "sheet/said_pages.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin {
namespace {

// How the settled sheet differs from the sheet as laid: seen from behind (the sheet turned about an
// upright axis), and then by half a turn.
struct Turning {
  bool behind = false, half = false;
  int columns = 1, rows = 1;
  bool x_mirrored() const { return behind != half; }
  int column(int column) const { return x_mirrored() ? columns - 1 - column : column; }
  int row(int row) const { return half ? rows - 1 - row : row; }
  Toward way(Toward way) const {
    return (lies_sideways(way) ? x_mirrored() : half) ? opposite(way) : way;
  }
  SheetLine line(SheetLine line) const {
    const bool at_mirrored = line.upright ? x_mirrored() : half;
    const bool along_mirrored = line.upright ? half : x_mirrored();
    const int across = line.upright ? columns : rows, along = line.upright ? rows : columns;
    if (at_mirrored)
      line.at = across - line.at;
    if (along_mirrored)
      std::tie(line.first, line.last) = std::pair(along - line.last, along - line.first);
    line.valley = line.valley != behind;
    return line;
  }
};

Turning turning_of(const FoldedPaper &paper, const PageFace &first) {
  Turning turning{!first.front, false, paper.panel_columns, paper.panel_rows};
  turning.half = turn_of(turning.way(first.head)) >= 180;
  return turning;
}

PagePlace page_place(const FoldedPaper &paper, const PageFace &face, const Turning &turning) {
  PagePlace place;
  place.column = turning.column(face.panel % paper.panel_columns);
  place.row = turning.row(face.panel / paper.panel_columns);
  place.front = face.front != turning.behind;
  place.head = turning.way(face.head);
  if (face.spine)
    place.spine = turning.way(*face.spine);
  place.layer = face.layer;
  return place;
}

// The line that a joint lies in, between panels.
SheetLine line_at(const FoldedPaper &paper, int b, bool side_by_side) {
  const int panel = paper.panel_of(b), columns = paper.panel_columns;
  const int column = panel % columns, row = panel / columns;
  return side_by_side ? SheetLine{true, column, row, row + 1, 0, false, true}
                      : SheetLine{false, row, column, column + 1, 0, false, true};
}

// Pieces of one line that follow each other become one.
std::vector<SheetLine> joined(std::vector<SheetLine> lines) {
  const auto key = [](const SheetLine &line) {
    return std::tuple(line.step, line.upright, line.at, line.valley, line.spine);
  };
  std::sort(lines.begin(), lines.end(), [&](const SheetLine &a, const SheetLine &b) {
    return std::tuple_cat(key(a), std::tuple(a.first)) <
           std::tuple_cat(key(b), std::tuple(b.first));
  });
  std::vector<SheetLine> whole;
  for (const SheetLine &line : lines) {
    if (!whole.empty() && key(whole.back()) == key(line) && line.first <= whole.back().last)
      whole.back().last = std::max(whole.back().last, line.last);
    else
      whole.push_back(line);
  }
  return whole;
}

std::vector<SheetLine> creases_of(const FoldedPaper &paper, std::optional<Toward> spine,
                                  const Turning &turning) {
  const std::vector<int> levels = paper.levels();
  std::vector<SheetLine> lines;
  for (const Joint &joint : paper.joints) {
    if (joint.step < 0)
      continue;
    SheetLine line = line_at(paper, joint.b, joint.side_by_side);
    const PaperCell &a = paper.at(joint.a);
    const bool a_lower =
        levels[static_cast<std::size_t>(joint.a)] < levels[static_cast<std::size_t>(joint.b)];
    line.step = joint.step;
    line.spine = spine && a.on_sheet(joint.of_a()) == *spine;
    line.valley = a.front_up() == a_lower; // the fronts face each other
    lines.push_back(turning.line(line));
  }
  return joined(std::move(lines));
}

std::vector<SheetLine> slits_of(const Folding &folding) {
  std::vector<SheetLine> lines;
  for (const Slit &slit : folding.slits)
    lines.push_back({!slit.between_rows, slit.after, slit.first - 1, slit.last, 0, false, true});
  return lines;
}

// What the panels of the paper as laid meet.
std::vector<PanelEdges> edges_as_laid(const FoldedPaper &paper) {
  std::vector<PanelEdges> edges(paper.panels());
  for (int panel = 0; panel < static_cast<int>(edges.size()); ++panel) {
    const int column = panel % paper.panel_columns, row = panel / paper.panel_columns;
    PanelEdges &of = edges[static_cast<std::size_t>(panel)];
    of.fill(PanelEdge::slit);
    const std::array<bool, 4> outer{row == 0, column == paper.panel_columns - 1,
                                    row == paper.panel_rows - 1, column == 0};
    for (std::size_t way = 0; way < 4; ++way)
      if (outer[way])
        of[way] = PanelEdge::sheet;
  }
  for (const Joint &joint : paper.joints) {
    const int a = paper.panel_of(joint.a), b = paper.panel_of(joint.b);
    if (a == b)
      continue;
    edges[static_cast<std::size_t>(a)][static_cast<std::size_t>(joint.of_a())] = PanelEdge::joined;
    edges[static_cast<std::size_t>(b)][static_cast<std::size_t>(opposite(joint.of_a()))] =
        PanelEdge::joined;
  }
  return edges;
}

std::vector<PanelEdges> edges_of(const FoldedPaper &paper, const Turning &turning) {
  const std::vector<PanelEdges> laid = edges_as_laid(paper);
  std::vector<PanelEdges> edges(laid.size());
  for (int panel = 0; panel < static_cast<int>(laid.size()); ++panel) {
    const int column = turning.column(panel % paper.panel_columns);
    const int row = turning.row(panel / paper.panel_columns);
    for (const Toward way : {Toward::up, Toward::right, Toward::down, Toward::left})
      edges[static_cast<std::size_t>(row) * static_cast<std::size_t>(paper.panel_columns) +
            static_cast<std::size_t>(column)][static_cast<std::size_t>(turning.way(way))] =
          laid[static_cast<std::size_t>(panel)][static_cast<std::size_t>(way)];
  }
  return edges;
}

// Steps and slits as the sheet is drawn on the side that faces up when folding starts. A back is
// seen as turned about the leaves' axis; where that lies across, it differs by half a turn from the
// sheet as it lay.
void tell_as_drawn(FoldedSheet &sheet, const Folding &folding, const Turning &turning) {
  const bool half = turning.half != (!sheet.front_up && !sheet.turns_upright);
  const Turning drawn{false, half, turning.columns, turning.rows};
  for (FoldStep &step : sheet.steps)
    if (half)
      step.moving = opposite(step.moving);
  for (const SheetLine &slit : slits_of(folding))
    sheet.slits_laid.push_back(drawn.line(slit));
}

} // namespace

std::vector<PanelShare> panel_shares(const Folding &folding, bool columns, bool mirrored) {
  const std::vector<int> &written = columns ? folding.widths : folding.heights;
  std::vector<PanelShare> shares(
      static_cast<std::size_t>(columns ? folding.columns : folding.rows));
  for (std::size_t i = 0; i < written.size(); ++i)
    shares[i].share = written[i];
  for (const Narrowed &narrowed : folding.narrowed)
    if (narrowed.column == columns)
      shares[static_cast<std::size_t>(narrowed.number) - 1].less += narrowed.by;
  if (mirrored)
    std::reverse(shares.begin(), shares.end());
  return shares;
}

std::optional<FoldedSheet> settled(const Folding &folding, const FoldedPaper &paper,
                                   const PagesMet &met, const Binding &binding,
                                   Problems &problems) {
  const Turning turning = turning_of(paper, met.pages.front());
  if (folding.tab && (turning.behind || turning.half)) {
    problems.push_back(strip_upside_down(folding));
    return std::nullopt;
  }
  FoldedSheet sheet;
  sheet.columns = paper.panel_columns;
  sheet.rows = paper.panel_rows;
  for (const PageFace &face : met.pages)
    sheet.pages.push_back(page_place(paper, face, turning));
  sheet.opened = binding.opened;
  sheet.one_side = folding.one_side;
  sheet.bound_at_side = binding.opened == OpenedBy::leaves && binding.at_side;
  const bool folded_spine = sheet.leaves_turn() && !sheet.bound_at_side;
  sheet.creases =
      creases_of(paper, folded_spine ? std::optional(binding.spine) : std::nullopt, turning);
  for (const SheetLine &slit : slits_of(folding))
    sheet.slits.push_back(turning.line(slit));
  sheet.across = panel_shares(folding, true, turning.x_mirrored());
  sheet.down = panel_shares(folding, false, turning.half);
  sheet.tab = folding.tab;
  sheet.edges = edges_of(paper, turning);
  sheet.layers = static_cast<int>(paper.piles.front().size());
  sheet.cut_open = met.cut_open;
  sheet.front_up = met.pages.front().front;
  const PagePlace &first = sheet.pages.front();
  sheet.turns_upright = first.spine ? lies_sideways(*first.spine) : !lies_sideways(first.head);
  sheet.steps = folding.steps;
  tell_as_drawn(sheet, folding, turning);
  if (!number_as_said(folding, sheet, problems))
    return std::nullopt;
  return sheet;
}

} // namespace bodkin
