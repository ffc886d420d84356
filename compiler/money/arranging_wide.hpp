// Where a book has more nodes than can be kept: the most promising are followed, by a bound that is
// the sum of two easier questions (arranging_alone). Price steps are chosen first: for each choice
// of steps that the runs may reach, sides have one price and their numbers limits, which the bound
// of the sides keeps exactly, and the walk, which counts them, too.
#pragma once

#include "money/arranging_search.hpp"
#include "money/arranging_space.hpp"

#include <optional>

namespace bodkin::arranging {

// Nothing where no order that can be printed was found. The bound is honest in any case; it is
// proved where the bound is met.
std::optional<Arranged> walk_wide(const Task &task, OrderSpace &space, const FullCost &full_cost,
                                  const Effort &effort);

} // namespace bodkin::arranging
