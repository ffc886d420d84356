// Which page of which sheet is which page of the edition: the folding repeated over as many sheets
// as the pages need, nested one in another, gathered one after another, or glued end to end.
#pragma once

#include "edition/folding.hpp"
#include "sheet/fold.hpp"

namespace bodkin {

struct Layout {
  enum class Kind { nested, gathered, strip } kind = Kind::nested;
  int sheets = 0;
  int pages_a_sheet = 0; // strip: of a whole sheet; the last may hold fewer
  int leaves_a_sheet = 0;
  int strip_panels = 0; // strip: that hold pages, of all sheets
  int sheets_a_section = 0;
  // The nearest counts that this folding takes, below and above the one asked; 0: there is none.
  int fewer = 0, more = 0;
  bool folds = true; // the count asked is one that it takes

  int pages = 0; // that the sheets carry
  // `sheet` and `page` count from 0: sheets from the outermost or first, pages as fold() gives
  // them. A strip is folded as one, and its pages are the edition's.
  int page_of(int sheet, int page) const;
  int section_of(int sheet) const;
  // Leaves come in pairs joined at the spine; this counts pairs of a section from the outermost, 0.
  int pair_of(int sheet, int layer) const;

private:
  int first_sheet(int sheet) const { return sheet / sheets_a_section * sheets_a_section; }
  int sheets_in_section(int sheet) const;
};

// Where the count does not fold: the layout of the next count up that does, or, where the folding
// has a fixed number of sheets, of as many sheets as carry all pages.
Layout layout(const FoldedSheet &folded, const Folding &folding, int page_count);

// Panels of a strip of so many pages; 0 where the folding has no tab.
int panels_of_strip(const Folding &folding, int page_count);

} // namespace bodkin
