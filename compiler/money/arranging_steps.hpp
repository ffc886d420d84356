// Price steps: each choice of steps that a run may reach is a question with one price for each kind
// of side, and with limits for how many there are. The limits are eased by a price on each side
// beyond or below them (Lagrange's multipliers: a lower bound for any price that is chosen, as any
// textbook of optimisation has it); where the bound still leaves room, outcomes within the limits
// are weighed.
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_search.hpp"

namespace bodkin::arranging {

// Betters `best` and its bound. False where the work was more than its bounds allow.
bool weigh_steps(const Task &task, OrderSpace &space, Layers &layers, const FullCost &full_cost,
                 const Effort &effort, Arranged &best);

// The one of two orders that costs less, or as much with fewer moves; the bound stays.
void take_better(Arranged &best, Arranged other);
Arranged with_cost(std::vector<int> order, const FullCost &full_cost);

} // namespace bodkin::arranging
