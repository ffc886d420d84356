// Outcomes priced in full, where lower prices do not tell which order is the cheapest.
#pragma once

#include "money/arranging_following.hpp"

namespace bodkin::arranging {

// Prices in full, the cheapest first, each outcome of the choice whose bound is not above `most`
// and that might beat `best`, and betters it. `layers` are as the choice is eased. False where
// there were too many of them, and `best` is not proved.
bool weigh_outcomes(const Choice &choice, OrderSpace &space, const Layers &layers,
                    const FullCost &full_cost, const Effort &effort, Nano most, Arranged &best);

// All orders, by the task's own prices.
Choice whole_choice(const Task &task);

} // namespace bodkin::arranging
