// Sheets with the page, turn and neighbours of every place, before any paper has a size.
#pragma once

#include "sheet/imposition.hpp"
#include "sheet/layout.hpp"

#include <array>

namespace bodkin {

// A panel of one side as seen: row by row from the top left.
struct SideCell {
  int page = -1;           // index into FoldedSheet::pages; none: -1
  int column = 0, row = 0; // of its own sheet, as seen on this side
  int layer = 0;           // of the folded pile, where leaves turn
  int turn = 0;
  SpineAt spine = SpineAt::none;
  std::array<Meets, 4> meets{}; // left, top, right, bottom in the page's upright frame
  std::array<bool, 4> under_tab{false, false, false, false}; // likewise: glued on the sheet before
};
struct SheetPattern {
  std::array<std::vector<SideCell>, 2> sides;
};

// The sheets' patterns: one that all share, or one for each sheet of a strip.
std::vector<SheetPattern> patterns_of(const FoldedSheet &folded, const Layout &layout);
inline const SheetPattern &pattern_of(const std::vector<SheetPattern> &patterns, int sheet) {
  return patterns[patterns.size() == 1 ? 0 : static_cast<std::size_t>(sheet)];
}

// Pages past `page_count` are places with no page.
Imposition lay_out(const FoldedSheet &folded, const std::vector<SheetPattern> &patterns,
                   const Layout &layout, int page_count);

} // namespace bodkin
