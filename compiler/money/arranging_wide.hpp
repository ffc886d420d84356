// Where a book has more nodes than can be kept: the most promising are followed, by a bound that is
// the sum of two easier questions, each answered exactly: the sides alone, as if paper were free
// and any page might lie on any, and the papers alone, as if nothing were printed.
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_search.hpp"

namespace bodkin::arranging {

struct WideWalk {
  std::vector<Laying> layings;
  Nano cost = 0;  // by lower prices, with what no order changes
  Nano bound = 0; // no order costs less
  bool arrived = false;
  bool all_followed = false; // nothing was left out that could be cheaper
};

// `most` is what an order is known to cost: dearer nodes are left.
WideWalk walk_wide(const Task &task, OrderSpace &space, Nano most, const Effort &effort);

} // namespace bodkin::arranging
