// A folding proved on paper: its steps done one by one, the layers checked, the pages found in the
// order that opening shows them. What comes out says where on the sheet each page is, which way its
// head points and which of its edges is the spine. No folding is known by name.
//
// Leaf by leaf, the spine is the crease of the last fold, or the edge that `spine` names; the
// folded sheet is then laid with the spine at its left and its leaves are turned from the top.
#pragma once

#include "edition/folding.hpp"
#include "problems/problem.hpp"
#include "sheet/folded_in.hpp"
#include "sheet/opening.hpp"

#include <array>
#include <optional>
#include <vector>

namespace bodkin {

// A page as it lies on the flat sheet; positions and directions as seen on the sheet's front.
struct PagePlace {
  int column = 0, row = 0;
  bool front = true;
  Toward head = Toward::up;
  std::optional<Toward> spine; // none where no leaf turns
  int layer = 0;               // of the folded pile from the top; leaf by leaf
};

// A fold or a slit as a line between panels: after `at` columns (or rows), beside the rows (or
// columns) from `first` up to `last`.
struct SheetLine {
  bool upright = true; // runs up and down the sheet
  int at = 0, first = 0, last = 0;
  int step = 0;       // that folds it, from 0
  bool spine = false; // the finished copy is bound at it
  bool valley = true; // folded towards who looks at the front
  bool operator==(const SheetLine &) const = default;
};

// Of one column or row of panels.
struct PanelShare {
  int share = 1;
  Length less; // than its share
};

// What an edge of a panel meets on the flat sheet.
enum class PanelEdge { sheet, slit, joined };
using PanelEdges = std::array<PanelEdge, 4>; // by Toward

struct FoldedSheet {
  int columns = 1, rows = 1;    // of panels; of the whole strip where sheets are glued end to end
  std::vector<PagePlace> pages; // in reading order; the first is on the front, upright where it may
  std::vector<SheetLine> creases; // in order of folding
  std::vector<SheetLine> slits;
  std::vector<PanelShare> across, down; // of one sheet
  std::optional<Tab> tab;
  std::vector<PanelEdges> edges;   // row by row
  int layers = 1;                  // of the folded pile
  std::vector<FoldedIn> folded_in; // panels that need room within others
  bool one_side = false;
  OpenedBy opened = OpenedBy::leaves;
  bool bound_at_side = false;        // the spine is no fold
  std::vector<Toward> cut_open;      // edges of a right-hand page that a knife opens
  bool turns_upright = true;         // a leaf turns about an axis that runs up and down the sheet
  bool front_up = true;              // the folding starts with the front facing up
  std::vector<FoldStep> steps;       // as the sheet lies when the folding starts
  std::vector<SheetLine> slits_laid; // slits likewise, seen on the side that then faces up

  std::size_t panel(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
           static_cast<std::size_t>(column);
  }
  bool leaves_turn() const { return opened == OpenedBy::leaves; }
  // Leaves lie in each other at the spine and push each other out.
  bool creeps() const { return leaves_turn() && !bound_at_side && !one_side; }
};

// The folding of one sheet, or, where it has a tab, of a strip of so many panels on sheets glued
// end to end (0: of one sheet). None where it cannot be; problems say why.
std::optional<FoldedSheet> fold(const Folding &folding, Problems &problems, int strip_panels = 0);

// The pages of one sheet in reading order, as fold() finds them, or what is at fault.
PagesMet pages_met(const Folding &folding, Problems &problems);

// Every stage of the folding as far as it goes, for drawing it: flat, then after each step.
std::vector<FoldedPaper> stages_of(const Folding &folding);

} // namespace bodkin
