#include "money/arranging_weighing.hpp"

namespace bodkin::arranging {

Choice whole_choice(const Task &task) {
  return {task, {}, std::vector<Nano>(task.costs.machines() * 2, 0), 0, false};
}

bool weigh_outcomes(const Choice &choice, OrderSpace &space, const Layers &layers,
                    const FullCost &full_cost, const Effort &effort, Nano most, Arranged &best) {
  const auto rest = [&](std::size_t at, const Node &node) { return layers.rest(at, node).cost; };
  FollowingBounds bounds;
  bounds.most = most;
  bounds.in_all = effort.outcomes;
  const Following following(choice, space, rest, bounds);
  if (!following.all_followed())
    return false;
  std::size_t priced = 0;
  for (const Follower &last : following.arrived()) {
    if (last.real > best.cost + no_money)
      break;
    if (++priced > effort.priced)
      return false;
    const std::vector<int> order = following.order_of(last);
    const Nano cost = full_cost(order);
    const bool cheaper = cost < best.cost - no_money;
    if (cheaper || (cost <= best.cost + no_money && last.moves < best.moves))
      best = {order, cheaper ? cost : best.cost, last.moves, best.bound, false, false};
  }
  return true;
}

} // namespace bodkin::arranging
