// Creep: how far each pair of leaves is pushed out past the outermost by those around it. At a
// sharp fold it is the sum, over the pairs outside it, of the mean caliper of each two neighbours
// (geometry: the centre line of a leaf lies half its own and half its neighbour's caliper further
// in). At a round fold, half a turn about the middle, it is that times π/2: the arcs of leaves
// whose centre lines lie that much further in are shorter by π for each unit, half of it on either
// leaf.
#pragma once

#include "measure/length.hpp"

#include <vector>

namespace bodkin {

// `calipers` of the pairs of one section, the outermost first; the first has none.
std::vector<Length> creep_of(const std::vector<Length> &calipers, bool round = false);

// What a measured dummy makes of one worked-out creep: the largest of all becomes what was
// measured, the others in proportion, to the nearest unit.
Length as_measured(Length creep, Length largest, Length measured);

} // namespace bodkin
