// How a picture stands in its area: whole and as large as it goes, or covering it all.
#pragma once

#include "edition/element.hpp"
#include "page/drawing.hpp"

namespace bodkin {

// `aspect` is width over height of the picture as seen, before its crop. An area without extent
// gives a window without extent.
SetPicture stand(const Picture &picture, bool fills, double aspect, const Box &area);

} // namespace bodkin
