// Where a page's own frame (y down from its top left) comes to lie on its sheet's PDF page (y up).
#pragma once

#include "page/transform.hpp"
#include "sheet/imposition.hpp"

namespace bodkin::press {

Transform page_to_sheet(const Place &place, const Size &page, const Size &sheet);
Polygon page_corners(const Size &page);
// Creep made up for, as a move along the page's own x: to the left where its spine is at the left.
Length shift_right(const Place &place);

} // namespace bodkin::press
