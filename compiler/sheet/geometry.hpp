// Where on its sheet each page lies, once the sheet has a size. A place is an equal share of the
// sheet; the page lies in it against the spine, what is over at the fore-edge, and half each at
// head and foot.
#pragma once

#include "edition/edition.hpp"
#include "sheet/fold.hpp"
#include "sheet/imposition.hpp"
#include "sheet/topology.hpp"

#include <optional>

namespace bodkin {

// The sheet as it lies for the folding: its long edge across, or upright.
Size lying(const Size &sheet, bool across);
// Of the stock, as it lies; where the stock has no sheet size, one that the pages fill.
Size sheet_size(const Edition &edition, const FoldedSheet &folded, StockId stock);
// The size of page that a sheet gives, upright as it is read: of its first place.
Size page_given(const FoldedSheet &folded, const Size &sheet);

// Fills size, boxes, slack and fold lines of a sheet whose stock is chosen.
void place_pages(const Edition &edition, const FoldedSheet &folded, const SheetPattern &pattern,
                 Sheet &sheet);

} // namespace bodkin
