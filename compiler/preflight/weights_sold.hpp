// Weights that papers are sold in, so that what is handed out to be typed can be bought.
#pragma once

#include "edition/edition.hpp"

#include <optional>

namespace bodkin {

// The weight nearest to `weight` that the machine takes, among those usual for its kind of paper
// (common practice, no source); nothing where the machine takes none of them.
std::optional<Weight> nearest_sold(const Weight &weight, const Machine &machine);

bool feeds(const Machine &machine, Grammage grammage);

} // namespace bodkin
