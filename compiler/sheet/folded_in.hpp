// Panels that lie within a fold made after them, as the flap of a letter fold does, and flaps that
// meet like a gate: each needs a little room, or the paper buckles.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/folded_paper.hpp"
#include "sheet/imposition.hpp"

#include <vector>

namespace bodkin {

// Numbers are those of columns (else of rows) as the folding counts them, from 0; line k lies
// before panel k.
struct FoldedIn {
  bool columns = true;
  int number = 0;     // of the panel that needs room
  int end = 0;        // the line that it ends at there
  int against = 0;    // the line that it must stay short of: a crease, or another flap's end
  int towards = 1;    // 1: that crease lies at the right (or the foot) of the folded paper; else -1
  int layers = 0;     // of paper within the crease
  bool flaps = false; // two ends that meet
  int other = 0;      // then the panel of the other end
  std::vector<int> ways; // by panel of that row: 1 as it lay, -1 turned over
};

// Of a paper wholly folded. Where a crease was made together with, or before, the one within it,
// the inner one formed where it had room.
std::vector<FoldedIn> folded_in(const FoldedPaper &paper);

// Problems: panel-buckles, a warning; flaps-meet, a note. On the thickest of the sheets.
void check_folded_in(const Edition &edition, const std::vector<FoldedIn> &panels,
                     const Imposition &imposition, const Sources &sources, Problems &problems);

} // namespace bodkin
