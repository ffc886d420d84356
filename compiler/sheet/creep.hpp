// Creep: how far each pair of leaves is pushed out past the outermost by those around it. At a
// sharp fold it is the sum, over the pairs outside it, of the mean caliper of each two neighbours
// (geometry: the centre line of a leaf lies half its own and half its neighbour's caliper further
// in).
#pragma once

#include "measure/length.hpp"

#include <vector>

namespace bodkin {

// `calipers` of the pairs of one section, the outermost first; the first has none.
std::vector<Length> creep_of(const std::vector<Length> &calipers);

} // namespace bodkin
