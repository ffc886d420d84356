#include "money/arranging_search.hpp"

#include "money/arranging_layers.hpp"
#include "money/arranging_steps.hpp"
#include "money/arranging_weighing.hpp"
#include "money/arranging_wide.hpp"

#include <algorithm>
#include <limits>

namespace bodkin::arranging {
namespace {

std::vector<int> as_written(const Task &task) {
  std::vector<int> order(task.places.size());
  for (std::size_t page = 1; page < order.size(); ++page)
    order[page] = static_cast<int>(page);
  return order;
}

// Steps for sides of any paper alike; where prices hang on the paper, outcomes are told apart.
bool has_steps(const Task &task) {
  return std::ranges::none_of(task.costs.steps,
                              [](Steps steps) { return steps == Steps::by_paper; }) &&
         std::ranges::any_of(task.price_steps, [](const auto &steps) { return steps.size() > 1; });
}

bool weigh(const Task &task, OrderSpace &space, Layers &layers, const FullCost &full_cost,
           const Effort &effort, Arranged &best) {
  return !task.sheets_matter && has_steps(task)
             ? weigh_steps(task, space, layers, full_cost, effort, best)
             : weigh_outcomes(whole_choice(task), space, layers, full_cost, effort,
                              best.cost + no_money, best);
}

// Every order that can be printed is a walk through whole layers.
std::optional<Arranged> from_layers(const Task &task, OrderSpace &space, Layers &layers,
                                    const FullCost &full_cost, const Effort &effort) {
  if (layers.from_start().cost == Rest::no_way)
    return std::nullopt;
  const Nano bound = task.beside + layers.from_start().cost;
  Arranged best = with_cost(space.order_of(layers.best()), full_cost);
  best.bound = bound;
  // Whatever else costs as little does so by lower prices too, and moves no fewer pages: but for
  // what was rounded down.
  if (best.cost <= bound + no_money) {
    best.proved = true;
    best.fewest_moves = task.in_whole_nanos || weigh(task, space, layers, full_cost, effort, best);
    return best;
  }
  if (!sheets_of(task, as_written(task)).empty())
    take_better(best, with_cost(as_written(task), full_cost));
  best.fewest_moves = weigh(task, space, layers, full_cost, effort, best);
  best.proved = best.fewest_moves || best.cost <= best.bound + no_money;
  return best;
}

} // namespace

int moves_in(const std::vector<int> &order) {
  int moves = 0;
  for (std::size_t place = 1; place < order.size(); ++place)
    moves += order[place] == static_cast<int>(place) ? 0 : 1;
  return moves;
}

bool any_order(const Task &task) {
  constexpr std::size_t most_nodes = 1'000'000;
  OrderSpace space(task);
  const Layers layers(space, most_nodes);
  return !layers.whole() || layers.from_start().cost != Rest::no_way;
}

std::optional<Arranged> cheapest_order(const Task &task, const FullCost &full_cost,
                                       const Effort &effort) {
  OrderSpace space(task);
  Layers layers(space, effort.nodes);
  return layers.whole() ? from_layers(task, space, layers, full_cost, effort)
                        : walk_wide(task, space, full_cost, effort);
}

} // namespace bodkin::arranging
