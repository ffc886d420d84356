// The order in which a reader meets the pages of folded paper, found by opening it.
//
// Leaf by leaf: the paper lies as one pile, its spine at one edge; leaves are turned from the top.
// Where a fold at another edge holds two layers together, the reader cannot look between them: with
// pages on one side only these are the hidden backs; with pages on both sides such folds are cut
// open first. Fold by fold: the folds are undone from the last, all that do not hinder each other
// at once; each time the pages that newly show are met from left to right, and at last, the paper
// turned over like a leaf, those on the back.
#pragma once

#include "sheet/folded_paper.hpp"

#include <optional>
#include <vector>

namespace bodkin {

// One side of one panel, as a page. Directions are those of the sheet seen from its front as laid.
struct PageFace {
  int panel = 0;
  bool front = true;
  Toward head = Toward::up;
  std::optional<Toward> spine; // leaf by leaf
  int layer = 0;               // leaf by leaf: of the pile, from the top
  bool operator==(const PageFace &) const = default;
};

struct PagesMet {
  enum class Fault {
    none,
    not_one_pile, // leaf by leaf, but the panels do not lie all on one place
    not_held,     // a leaf hangs in no fold at the spine
    out_of_sight, // a page lies inside a fold that no reader opens
    blank_shown,  // an opening shows the side that holds no pages
    not_pasted    // the ends that are to be pasted together do not lie on each other
  } fault = Fault::none;
  int panel = -1; // at fault
  std::vector<PageFace> pages;
  std::vector<Toward> cut_open; // edges of the folded paper whose folds a knife opens, spine left
};

struct ReadingRules {
  bool one_side = false;
  bool bound_at_side = false; // stapled, sewn or glued through all leaves beside the spine
  bool ends_pasted = false;
};

PagesMet read_leaves(const FoldedPaper &paper, Toward spine, const ReadingRules &rules);
// `stages`: the paper flat, then after each step.
PagesMet read_folds(const std::vector<FoldedPaper> &stages, const ReadingRules &rules);

// Every leaf hangs in a fold at this edge of the pile, so that no staple is needed beside it.
bool leaves_hang_at(const FoldedPaper &paper, Toward edge, bool one_side);

// Every layer hangs in a fold at this edge of the pile.
bool all_hang_at(const FoldedPaper &paper, Toward edge);

} // namespace bodkin
