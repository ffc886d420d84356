// What a copy costs, over how many are made, each way to make it a line: black on white, told apart
// by dashes and by a name at the line's end, so that a copier keeps it.
#pragma once

#include "money/estimate.hpp"
#include "sheet/figure.hpp"

#include <string>

namespace bodkin {

// Copies run from a tenth of the run to ten times it, and beyond the last crossing, by powers; cost
// runs evenly from nothing. Where another way becomes the cheapest the line is marked.
Figure draw_costs(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  const Estimate &estimate);

std::string costs_as_svg(const Edition &edition, const Figure &costs);

} // namespace bodkin
