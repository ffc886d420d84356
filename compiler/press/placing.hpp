// Where a page's own frame (y down from its top left) comes to lie on its sheet's PDF page (y up).
#pragma once

#include "page/transform.hpp"
#include "sheet/imposition.hpp"

namespace bodkin::press {

Transform page_to_sheet(const Place &place, const Size &page, const Size &sheet);
Polygon page_corners(const Size &page);
// How far the halves of a spread on one piece of paper reach past their fold: programs that smooth
// edges would show a light line between halves that only touch.
inline constexpr Length past_fold = Length::points(1);
// Creep made up for, as a move along the page's own x: to the left where its spine is at the left.
Length shift_right(const Place &place);

} // namespace bodkin::press
