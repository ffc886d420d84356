// The parts of the estimate that tell what comes back, and what was really paid.
#pragma once

#include "money/estimate.hpp"

#include <string>

namespace bodkin {

// Both are empty where the edition says nothing of it.
std::string sales_as_text(const Estimate &estimate);
std::string paid_as_text(const Estimate &estimate);

} // namespace bodkin
