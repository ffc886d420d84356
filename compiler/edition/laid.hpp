// Every element that stands on a page of an edition, however it came there: written on the page or
// on its spread, running through it, or laid out of standing matter.
#pragma once

#include "edition/edition.hpp"

#include <functional>

namespace bodkin {

// Page by page, in order of laying; a spread's elements once, on its left page. Matter nested too
// deep, and what is more than a page may hold, is left out: that was reported.
void each_laid(const Edition &edition, const std::function<void(ElementId, int page)> &visit);

} // namespace bodkin
