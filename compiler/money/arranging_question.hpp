// From an edition to the question that `bodkin arrange` answers.
#pragma once

#include "money/arranging_pricing.hpp"
#include "money/arranging_wishes.hpp"

namespace bodkin::arranging {

// Which edition and blocks; the ids of stocks and machines are their numbers in Costs.
Task task_of(const AsWritten &written, const std::vector<PageBlock> &blocks);

} // namespace bodkin::arranging
