// What a side costs by its mode, as a machine's first price for a side says it.
#pragma once

#include "preflight/preflight.hpp"

#include <optional>
#include <utility>

namespace bodkin {

struct SidePrices {
  Price colour, black;
};

// None where either is not written.
std::optional<SidePrices> prices_of(const Inspection &inspection, int page);

using SideKey = std::pair<int, int>; // index of the sheet, 0 front or 1 back
SideKey side_key(const Inspection &inspection, int page);
bool is_colour(const Inspection &inspection, const SideKey &key);

} // namespace bodkin
