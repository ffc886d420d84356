// Outcomes of orders, where lower prices alone do not settle which is the cheapest: how many sides
// are printed how on which paper is all that the estimate sees of an order.
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_search.hpp"

namespace bodkin::arranging {

// How many sides of each machine × 2 + mode there may be, as RunCosts::sides counts them.
struct SideLimits {
  std::int64_t fewest = 0, most = 0;
};

// Prices in full, by its cheapest bound first, each outcome that might beat `best`, and betters it.
// Outcomes past the limits, where there are any, are left out. False where there were too many of
// them, and `best` is not proved.
bool weigh_outcomes(const Task &task, OrderSpace &space, const Layers &layers,
                    const FullCost &full_cost, const Effort &effort, Arranged &best,
                    const std::vector<SideLimits> &limits = {});

} // namespace bodkin::arranging
