// Where on its sheet each page lies, once the sheet has a size. A place is a share of the sheet,
// less what its folding makes it narrower and without the tab; the page lies in it against the
// spine, what is over at the fore-edge, and half each at head and foot.
#pragma once

#include "edition/edition.hpp"
#include "sheet/fold.hpp"
#include "sheet/imposition.hpp"
#include "sheet/topology.hpp"

#include <optional>
#include <vector>

namespace bodkin {

// Where the panels along one direction end: shares of what the tab leaves, what some give up spread
// over all. Lines are counted from one end, so that shares meet exactly, whatever the rounding.
std::vector<Length> lines_along(const std::vector<PanelShare> &panels, Length extent);

// The sheet as it lies for the folding: its long edge across, or upright.
Size lying(const Size &sheet, bool across);
// Fibres run along the long edge of the sheet as it lies, or the short one; a fold runs along the
// grain where it is parallel.
bool runs_along(bool fold_upright, const Size &sheet, Grain grain);
// Of the stock, as it lies; where the stock has no sheet size, one that the pages fill.
Size sheet_size(const Edition &edition, const FoldedSheet &folded, StockId stock);
// The size of the largest page that a sheet gives, upright as it is read.
Size page_given(const FoldedSheet &folded, const Size &sheet);
// A sheet too small for its tab and for what its panels give up leaves a panel no paper.
bool has_room(const FoldedSheet &folded, const Size &sheet);

// Fills size, boxes, slack, fold lines and slits of a sheet whose stock is chosen.
void place_pages(const Edition &edition, const FoldedSheet &folded, const SheetPattern &pattern,
                 Sheet &sheet);

} // namespace bodkin
