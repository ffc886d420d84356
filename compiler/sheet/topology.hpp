// Sheets with the page, turn and neighbours of every place, before any paper has a size.
#pragma once

#include "sheet/imposition.hpp"
#include "sheet/layout.hpp"

#include <array>

namespace bodkin {

// One side of every sheet: which leaf shows at each panel, row by row from the top left as seen.
struct SideCell {
  int leaf = 0;
  int column = 0, row = 0; // as seen on this side
  bool recto = true;
  std::array<Meets, 4> meets{}; // left, top, right, bottom in the page's upright frame
};
struct SheetPattern {
  std::array<std::vector<SideCell>, 2> sides;
};
SheetPattern pattern_of(const FoldedSheet &folded);

// Pages past `page_count` are places with no page.
Imposition lay_out(const FoldedSheet &folded, const SheetPattern &pattern, const Layout &layout,
                   int page_count);

} // namespace bodkin
