// One sheet (or a strip of sheets glued end to end) in the middle of being folded flat.
//
// The sheet is a grid of cells, the smallest shares that its folds count in; a panel is one cell or
// a rectangle of several. Cells that are neighbours on the sheet and not cut apart are joined.
// Every cell lies at a whole place of the plane, turned over or not; what lies at one place is a
// pile. No folding is known by name.
#pragma once

#include "edition/folding.hpp"
#include "sheet/toward.hpp"

#include <optional>
#include <vector>

namespace bodkin {

struct PaperCell {
  int x = 0, y = 0;
  bool across = false, over = false; // turned about an upright axis, and about one that lies across
  bool front_up() const { return across == over; }
  // A direction of the plane as a direction on the sheet, seen from its front; and back again.
  Toward on_sheet(Toward seen) const {
    seen = across ? mirrored(seen, true) : seen;
    return over ? mirrored(seen, false) : seen;
  }
  bool operator==(const PaperCell &) const = default;
};

// Between two cells, `a` to the left of `b` on the sheet, or above it.
struct Joint {
  int a = 0, b = 0;
  bool side_by_side = true;
  int step = -1; // that folds it; -1: lies flat
  Toward of_a() const { return side_by_side ? Toward::right : Toward::down; }
};

using CellPile = std::vector<int>; // from the bottom up

struct FoldedPaper {
  int columns = 1, rows = 1;                // of cells
  int panel_columns = 1, panel_rows = 1;    // of panels
  std::vector<int> column_panel, row_panel; // the panel that a column or row of cells is in
  std::vector<PaperCell> cells;             // row by row
  std::vector<Joint> joints;
  int left = 0, top = 0, width = 1, height = 1; // what the paper covers now
  std::vector<CellPile> piles;                  // row by row

  int panel_of(int cell) const {
    return row_panel[static_cast<std::size_t>(cell / columns)] * panel_columns +
           column_panel[static_cast<std::size_t>(cell % columns)];
  }
  std::size_t panels() const {
    return static_cast<std::size_t>(panel_columns) * static_cast<std::size_t>(panel_rows);
  }
  const PaperCell &at(int cell) const { return cells[static_cast<std::size_t>(cell)]; }
  const CellPile &pile(int x, int y) const {
    return piles[static_cast<std::size_t>(y - top) * static_cast<std::size_t>(width) +
                 static_cast<std::size_t>(x - left)];
  }
  std::vector<int> levels() const; // of each cell in its pile, from the bottom up
};

// Flat, front up, cut as the folding says; where it has a tab, a strip of so many panels on as many
// sheets as they need (0: of one sheet).
FoldedPaper flat_paper(const Folding &folding, int strip_panels = 0);

// Whether all panels still hang together; else one that falls off.
std::optional<int> panel_cut_off(const FoldedPaper &paper);

// Why a step cannot be done.
enum class Hindrance {
  no_half,       // the paper lies an odd number of cells wide (or high)
  nothing_there, // the fold would lie on the paper's edge or beyond it
  through_panel, // the fold would crease the middle of a page
  no_strip,      // back and forth, but the panels make no strip
  no_such_start, // back and forth from a panel that the strip does not have
  no_slit,       // ends together, but nothing opens between the ends
  slit_uneven,   // the slit has no middle line to bend at
  no_ends,       // the slit reaches to an end of the strip
};

struct Folded {
  std::optional<Hindrance> hindrance;
  int panel = -1; // that hinders
};

// Changes the paper, or says why not. `step` counts from 0.
Folded fold_over(FoldedPaper &paper, const FoldStep &how, int step);
Folded fold_back_and_forth(FoldedPaper &paper, const FoldStep &how, int step);
Folded push_ends_together(FoldedPaper &paper, int step);
Folded do_step(FoldedPaper &paper, const FoldStep &how, int step);

} // namespace bodkin
