// Which leaf of which sheet carries which pages: the folding repeated over as many sheets as the
// pages need, nested one in another or gathered one after another.
#pragma once

#include "edition/folding.hpp"
#include "sheet/fold.hpp"

namespace bodkin {

struct Layout {
  int sheets = 0;
  int leaves_a_sheet = 0; // even: every fold pairs leaves
  bool nested = true;
  // The nearest counts that this folding takes, below and above the one asked; 0: there is none.
  int fewer = 0, more = 0;
  bool folds = true; // the count asked is one that it takes

  int pages_a_sheet() const { return 2 * leaves_a_sheet; }
  int pages() const { return sheets * pages_a_sheet(); }
  // `sheet` and `leaf` count from 0, in order from the outermost or first, and in reading order.
  int recto_of(int sheet, int leaf) const;
  int section_of(int sheet) const { return nested ? 1 : sheet + 1; }
  // Leaves come in pairs joined at the spine; this counts pairs of a section from the outermost, 0.
  int pair_of(int sheet, int leaf) const;
};

// Where the count does not fold: the layout of the next count up that does, or, where the folding
// has a fixed number of sheets, of as many sheets as carry all pages.
Layout layout(const FoldedSheet &folded, const Folding &folding, int page_count);

} // namespace bodkin
