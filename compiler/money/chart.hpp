// What a copy costs, over how many are made, each way to make it a line: black on white, told apart
// by dashes and by a letter at the line's end, so that a copier keeps it.
#pragma once

#include "money/estimate.hpp"
#include "money/way.hpp"
#include "sheet/figure.hpp"

#include <string>
#include <vector>

namespace bodkin {

// Where another way becomes the cheapest the line is marked with a number. A key below names the
// ways by their letters and the marks by their numbers, and tells what is not drawn and why.
Figure draw_costs(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  const Estimate &estimate);
// The same of any ways, one's own first.
Figure draw_ways(const std::string &title, const Estimate &estimate, const std::vector<Way> &ways);

std::string costs_as_svg(const Edition &edition, const Figure &costs);

} // namespace bodkin
