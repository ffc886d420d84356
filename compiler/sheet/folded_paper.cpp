#include "sheet/folded_paper.hpp"

#include <algorithm>
#include <numeric>

namespace bodkin {
namespace {

// `count` panels; those of a strip repeat from sheet to sheet.
std::vector<int> shares_of(const std::vector<int> &written, int panels, int count) {
  std::vector<int> shares;
  shares.reserve(static_cast<std::size_t>(count));
  for (int panel = 0; panel < count; ++panel)
    shares.push_back(written.empty() ? 1 : written[static_cast<std::size_t>(panel % panels)]);
  return shares;
}

// Which panel each cell along one direction is in.
std::vector<int> panels_along(const std::vector<int> &shares) {
  std::vector<int> panels;
  for (std::size_t i = 0; i < shares.size(); ++i)
    panels.insert(panels.end(), static_cast<std::size_t>(shares[i]), static_cast<int>(i));
  return panels;
}

// Slits repeat on every sheet of a strip; a slit between rows of one sheet ends with the sheet.
bool cut_apart(const Folding &folding, bool between_rows, int after, int beside) {
  return std::any_of(folding.slits.begin(), folding.slits.end(), [&](const Slit &slit) {
    return slit.between_rows == between_rows && slit.after == after + 1 &&
           slit.first <= beside + 1 && beside + 1 <= slit.last;
  });
}

void join_cells(FoldedPaper &paper, const Folding &folding) {
  const auto column = [&](int x) { return paper.column_panel[static_cast<std::size_t>(x)]; };
  const auto row = [&](int y) { return paper.row_panel[static_cast<std::size_t>(y)]; };
  for (int y = 0; y < paper.rows; ++y)
    for (int x = 0; x < paper.columns; ++x) {
      const int cell = y * paper.columns + x;
      const int own_column = column(x) % folding.columns, own_row = row(y) % folding.rows;
      const bool last_column = own_column + 1 == folding.columns;
      const bool last_row = own_row + 1 == folding.rows;
      if (x + 1 < paper.columns && (column(x) == column(x + 1) || last_column ||
                                    !cut_apart(folding, false, own_column, own_row)))
        paper.joints.push_back({cell, cell + 1, true, -1});
      if (y + 1 < paper.rows &&
          (row(y) == row(y + 1) || last_row || !cut_apart(folding, true, own_row, own_column)))
        paper.joints.push_back({cell, cell + paper.columns, false, -1});
    }
}

} // namespace

std::vector<int> FoldedPaper::levels() const {
  std::vector<int> levels(cells.size());
  for (const CellPile &pile : piles)
    for (std::size_t level = 0; level < pile.size(); ++level)
      levels[static_cast<std::size_t>(pile[level])] = static_cast<int>(level);
  return levels;
}

FoldedPaper flat_paper(const Folding &folding, int strip_panels) {
  const bool strip = folding.tab && strip_panels > 0;
  const bool down = strip && folding.tab->at == Part::bottom;
  FoldedPaper paper;
  paper.column_panel = panels_along(
      shares_of(folding.widths, folding.columns, strip && !down ? strip_panels : folding.columns));
  paper.row_panel =
      panels_along(shares_of(folding.heights, folding.rows, down ? strip_panels : folding.rows));
  paper.columns = static_cast<int>(paper.column_panel.size());
  paper.rows = static_cast<int>(paper.row_panel.size());
  paper.panel_columns = paper.column_panel.back() + 1;
  paper.panel_rows = paper.row_panel.back() + 1;
  paper.width = paper.columns;
  paper.height = paper.rows;
  for (int y = 0; y < paper.rows; ++y)
    for (int x = 0; x < paper.columns; ++x) {
      paper.piles.push_back({static_cast<int>(paper.cells.size())});
      paper.cells.push_back({x, y, false, false});
    }
  join_cells(paper, folding);
  return paper;
}

std::optional<int> panel_cut_off(const FoldedPaper &paper) {
  std::vector<std::vector<int>> neighbours(paper.cells.size());
  for (const Joint &joint : paper.joints) {
    neighbours[static_cast<std::size_t>(joint.a)].push_back(joint.b);
    neighbours[static_cast<std::size_t>(joint.b)].push_back(joint.a);
  }
  std::vector<bool> hangs(paper.cells.size());
  std::vector<int> found{0};
  hangs[0] = true;
  for (std::size_t i = 0; i < found.size(); ++i)
    for (const int next : neighbours[static_cast<std::size_t>(found[i])])
      if (!hangs[static_cast<std::size_t>(next)]) {
        hangs[static_cast<std::size_t>(next)] = true;
        found.push_back(next);
      }
  const auto loose = std::find(hangs.begin(), hangs.end(), false);
  if (loose == hangs.end())
    return std::nullopt;
  return paper.panel_of(static_cast<int>(loose - hangs.begin()));
}

Folded do_step(FoldedPaper &paper, const FoldStep &how, int step) {
  switch (how.kind) {
  case FoldKind::over_a_line:
    return fold_over(paper, how, step);
  case FoldKind::back_and_forth:
    return fold_back_and_forth(paper, how, step);
  case FoldKind::ends_together:
    break;
  }
  return push_ends_together(paper, step);
}

} // namespace bodkin
