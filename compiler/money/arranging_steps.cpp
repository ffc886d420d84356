#include "money/arranging_steps.hpp"

#include "money/arranging_alone.hpp"
#include "money/arranging_weighing.hpp"

#include <algorithm>
#include <limits>

namespace bodkin::arranging {
namespace {

struct Looking {
  const Task &task;
  OrderSpace &space;
  Layers &layers;
  const FullCost &full_cost;
  const Effort &effort;
  Arranged &best;
  EasierQuestions easier;
  Costs eased{}; // that the space is priced by
  std::size_t looks = 0;

  // The cheapest order by the choice's prices as they are eased now.
  std::vector<int> look(Choice &choice) {
    ++looks;
    eased = choice.eased_costs();
    space.price_by(eased);
    layers.look_back();
    choice.bound = std::max(choice.bound, choice.eased_beside() + layers.from_start().cost);
    return space.order_of(layers.best());
  }

  void first_look(Choice &choice) {
    Arranged found = with_cost(look(choice), full_cost);
    choice.settled = found.cost <= choice.bound + no_money;
    take_better(best, std::move(found));
  }

  bool open(const Choice &choice) const {
    return !choice.settled && choice.bound <= best.cost + no_money;
  }

  // From where the sides alone are best, in a few looks at the whole.
  void tighten(Choice &choice) {
    constexpr int most_tried = 4;
    easier.tighten(choice);
    Easing easing(task, choice);
    std::vector<Nano> kept = choice.eased;
    Nano kept_bound = std::numeric_limits<Nano>::min();
    for (int i = 0; i < most_tried && open(choice) && looks < effort.looks; ++i) {
      const std::vector<int> order = look(choice);
      take_better(best, with_cost(order, full_cost));
      if (const Nano bound = choice.eased_beside() + layers.from_start().cost; bound > kept_bound)
        kept_bound = bound, kept = choice.eased;
      if (!easing.ease(choice, counts_of(task, order), layers.from_start().cost))
        break;
    }
    choice.eased = kept;
  }

  // The most promising alone, to know early what the choice may cost.
  void follow(const Choice &choice) {
    const auto rest = [&](std::size_t at, const Node &node) { return layers.rest(at, node).cost; };
    FollowingBounds bounds;
    bounds.most = best.cost + no_money;
    bounds.at_each = effort.wide_nodes / 10;
    const Following following(choice, space, rest, bounds);
    if (!following.arrived().empty())
      take_better(best, with_cost(following.order_of(following.arrived().front()), full_cost));
  }

  // Up to a little above the bound first, where there are few outcomes: one that is found there
  // makes it easy to say that nothing else is cheaper.
  bool weigh(Choice &choice) {
    look(choice);
    follow(choice);
    easier.bound_within(choice, best.cost + no_money);
    for (const Nano part : {64, 16, 4, 1}) {
      if (!open(choice))
        return true;
      const Nano most = choice.bound + (best.cost - choice.bound) / part + no_money;
      if (!weigh_outcomes(choice, space, layers, full_cost, effort, most, best))
        return false;
      choice.bound = std::max(choice.bound, std::min(most, best.cost));
      choice.settled = most >= best.cost + no_money;
    }
    return choice.settled;
  }
};

} // namespace

bool weigh_steps(const Task &task, OrderSpace &space, Layers &layers, const FullCost &full_cost,
                 const Effort &effort, Arranged &best) {
  Looking looking{task, space, layers, full_cost, effort, best, {task, space, effort}};
  std::vector<Choice> choices = choices_of(task);
  for (Choice &choice : choices)
    choice.bound = looking.easier.bound(choice);
  std::ranges::stable_sort(choices, {}, &Choice::bound);
  bool all = true;
  for (Choice &choice : choices) {
    if (looking.open(choice))
      looking.first_look(choice);
    if (looking.open(choice))
      looking.tighten(choice);
    if (looking.open(choice))
      all = looking.weigh(choice) && all;
  }
  space.price_by(task.costs);
  Nano bound = best.cost;
  for (const Choice &choice : choices)
    if (!choice.settled)
      bound = std::min(bound, choice.bound);
  best.bound = std::max(best.bound, bound);
  return all;
}

void take_better(Arranged &best, Arranged other) {
  if (other.cost < best.cost - no_money ||
      (other.cost <= best.cost + no_money && other.moves < best.moves)) {
    other.bound = best.bound;
    best = std::move(other);
  }
}

Arranged with_cost(std::vector<int> order, const FullCost &full_cost) {
  const Nano cost = full_cost(order);
  const int moves = moves_in(order);
  return {std::move(order), cost, moves, 0, false, false};
}

} // namespace bodkin::arranging
