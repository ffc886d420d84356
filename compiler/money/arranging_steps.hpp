// Price steps in a book whose nodes are all kept: for each choice of steps the bound is tightened,
// and where it still leaves room, outcomes within the limits are weighed.
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_search.hpp"

namespace bodkin::arranging {

// Betters `best` and its bound. False where the work was more than its bounds allow, and another
// order may cost less, down to the bound, or as much with fewer moves.
bool weigh_steps(const Task &task, OrderSpace &space, Layers &layers, const FullCost &full_cost,
                 const Effort &effort, Arranged &best);

// The one of two orders that costs less, or as much with fewer moves; the bound stays.
void take_better(Arranged &best, Arranged other);
Arranged with_cost(std::vector<int> order, const FullCost &full_cost);

} // namespace bodkin::arranging
