// Outcomes of orders, where lower prices alone do not settle which is the cheapest: how many sides
// are printed how on which paper is all that the estimate sees of an order.
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_search.hpp"

namespace bodkin::arranging {

// Prices in full, by its cheapest bound first, each outcome that might beat `best`, and betters it.
// False where there were too many of them, and `best` is not proved.
bool weigh_outcomes(const Task &task, OrderSpace &space, const Layers &layers,
                    const FullCost &full_cost, const Effort &effort, Arranged &best);

} // namespace bodkin::arranging
