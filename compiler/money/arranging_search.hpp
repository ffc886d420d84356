// The order of pages that costs least, proved.
//
// First the walk of least cost by the lower prices of Task is found exactly (arranging_layers). If
// the estimate says the same of it, nothing can be cheaper. Else price steps or sheets fed through
// blank are at work: then every outcome whose lower price is not above the best estimate so far is
// priced in full (arranging_outcomes). Where there are too many nodes for either, the best nodes
// are followed and the rest is bounded by two easier questions (arranging_wide): the gap between
// both is said.
#pragma once

#include "money/arranging_task.hpp"

#include <functional>
#include <optional>
#include <vector>

namespace bodkin::arranging {

// What the estimate says of an order that can be printed: the whole run.
using FullCost = std::function<Nano(const std::vector<int> &order)>;

// Bounds of the work, in nodes and orders rather than seconds: the same on every desk.
struct Effort {
  std::size_t nodes = 3'000'000;
  std::size_t outcomes = 1'500'000;
  std::size_t looks = 40; // at all nodes, by other prices
  std::size_t priced = 20'000;
  std::size_t wide_nodes = 30'000; // followed at each place
};

struct Arranged {
  std::vector<int> order; // by place: the page as written; index 0 is unused
  Nano cost = 0;
  int moves = 0;
  Nano bound = 0; // no order costs less
  bool proved = false;
  bool fewest_moves = false; // no other order as cheap moves fewer pages
};

// Estimates may round where lower prices do: a thousandth of a millionth of a unit is no money.
inline constexpr Nano no_money = 1'000;

// Nothing where no order can be printed.
std::optional<Arranged> cheapest_order(const Task &task, const FullCost &full_cost,
                                       const Effort &effort = {});

// Whether there is one that can be printed, as far as can be counted.
bool any_order(const Task &task);

int moves_in(const std::vector<int> &order);

} // namespace bodkin::arranging
