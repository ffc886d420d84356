// What it costs that runs whose copies tell another price have sheets of their own for it.
#pragma once

#include "money/charged.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <vector>

namespace bodkin {

// A note where a sheet is made apart for nothing but the price on it. `draws` is by page, numbered
// on through all parts.
void check_price_apart(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, const std::vector<bool> &draws,
                       const Sources &sources, Problems &problems);

} // namespace bodkin
