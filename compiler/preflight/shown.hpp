// What is to be seen at a spot of a page: how light the things laid there are.
#pragma once

#include "preflight/preflight.hpp"

#include <optional>

namespace bodkin {

// The inverse of a map that only turns and moves.
Point back(const Transform &map, const Point &p);

// The luminance that an item shows at a spot of the page, over what lay there before; none where it
// does not reach, or is neither a picture nor a fill.
std::optional<double> shown_at(const Inspection &inspection, const Item &item, const Point &spot,
                               double under);

} // namespace bodkin
