// Another number of copies that a budget would bear.
#pragma once

#include "money/estimate.hpp"
#include "money/way.hpp"

#include <optional>

namespace bodkin {

// For a budget of a copy the next longer run within it, up to four times as long (beyond that it is
// another edition). For a budget of the run a longer one that a price step makes cheaper, else the
// longest shorter one.
std::optional<std::int64_t> run_within(const Way &own, std::int64_t copies,
                                       const BudgetHeld &budget);

} // namespace bodkin
