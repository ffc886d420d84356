#include "money/arranging_steps.hpp"

#include "money/arranging_outcomes.hpp"

#include <algorithm>
#include <limits>

namespace bodkin::arranging {
namespace {

// One step for each machine and mode, as a task with those prices.
struct Choice {
  Task task;
  std::vector<SideLimits> limits;
  std::vector<Nano> eased; // the price on each side, by machine × 2 + mode
  Nano bound = 0;
  bool settled = false; // the estimate says of its cheapest order what its prices say
};

// So much more for each side that price steps count.
void price_side(Costs &costs, std::size_t priced, Nano more) {
  const std::size_t of_a_stock = costs.machines() * 2;
  for (RunCosts &run : costs.runs)
    for (std::size_t i = priced; i < run.side.size(); i += of_a_stock)
      run.side[i] += more * run.sides;
}

void choose(Choice &choice, std::size_t priced, const PriceStep &step) {
  Costs &costs = choice.task.costs;
  const std::size_t of_a_stock = costs.machines() * 2;
  for (std::size_t run = 0; run < costs.runs.size(); ++run)
    for (std::size_t i = priced; i < costs.runs[run].side.size(); i += of_a_stock)
      costs.runs[run].side[i] = step.side[run];
  choice.task.beside += step.beside;
  choice.limits[priced] = {step.fewest, step.most};
}

// The dearest that one side counts in any run.
Nano price_of_side(const Costs &costs, std::size_t priced) {
  Nano price = 0;
  for (const RunCosts &run : costs.runs)
    price = std::max(price, run.side[priced] / run.sides + 1);
  return price;
}

std::vector<Choice> choices_of(const Task &task) {
  const std::size_t modes = task.costs.machines() * 2;
  std::vector<Choice> choices{{task, std::vector<SideLimits>(modes, SideLimits{0, no_limit}),
                               std::vector<Nano>(modes, 0), 0, false}};
  for (std::size_t priced = 0; priced < modes; ++priced) {
    if (task.price_steps[priced].size() < 2)
      continue;
    std::vector<Choice> more;
    for (const Choice &choice : choices)
      for (const PriceStep &step : task.price_steps[priced]) {
        more.push_back(choice);
        choose(more.back(), priced, step);
      }
    choices = std::move(more);
  }
  return choices;
}

// Sides of an order by machine × 2 + mode, as limits count them.
std::vector<std::int64_t> counts_of(const Task &task, const std::vector<int> &order) {
  std::vector<std::int64_t> counts(task.costs.machines() * 2);
  for (const SheetUse &use : sheets_of(task, order))
    for (std::size_t run = 0; run < use.runs.size(); ++run)
      for (const SheetSide &side : use.runs[run].sides)
        if (side.printed)
          counts[static_cast<std::size_t>(side.machine) * 2 +
                 static_cast<std::size_t>(side.mode)] += task.costs.runs[run].sides;
  return counts;
}

struct Looking {
  const Task &task;
  OrderSpace &space;
  Layers &layers;
  const FullCost &full_cost;
  const Effort &effort;
  Arranged &best;
  std::size_t looks = 0;

  // The cheapest order by the choice's prices as they are eased now.
  std::vector<int> look(Choice &choice, Costs &eased) {
    ++looks;
    eased = choice.task.costs;
    Nano beside = choice.task.beside;
    for (std::size_t priced = 0; priced < choice.eased.size(); ++priced) {
      const Nano price = choice.eased[priced];
      if (price == 0)
        continue;
      price_side(eased, priced, price);
      beside -= price * (price < 0 ? choice.limits[priced].fewest : choice.limits[priced].most);
    }
    space.price_by(eased);
    layers.look_back();
    choice.bound = std::max(choice.bound, beside + layers.from_start().cost);
    return space.order_of(layers.best());
  }

  void first_look(Choice &choice) {
    Costs eased;
    Arranged found = with_cost(look(choice, eased), full_cost);
    choice.settled = found.cost <= choice.bound + no_money;
    take_better(best, std::move(found));
  }

  bool open(const Choice &choice) const {
    return !choice.settled && choice.bound <= best.cost + no_money;
  }

  // By halves, for each machine and mode whose count lies past its limits.
  void tighten(Choice &choice) {
    std::vector<Nano> least(choice.eased.size()), most(choice.eased.size());
    for (std::size_t priced = 0; priced < least.size(); ++priced)
      if (task.price_steps[priced].size() > 1) {
        most[priced] = price_of_side(choice.task.costs, priced) * 2;
        least[priced] = -most[priced] / 2;
      }
    Choice kept = choice;
    for (int i = 0; i < 6 && open(kept) && looks < effort.looks; ++i) {
      Costs eased;
      Choice tried = choice;
      tried.bound = std::numeric_limits<Nano>::min();
      const std::vector<int> order = look(tried, eased);
      take_better(best, with_cost(order, full_cost));
      if (tried.bound > kept.bound)
        kept.bound = tried.bound, kept.eased = tried.eased;
      if (!ease(choice, counts_of(task, order), least, most))
        break;
    }
    choice = kept;
  }

  static bool ease(Choice &choice, const std::vector<std::int64_t> &counts,
                   std::vector<Nano> &least, std::vector<Nano> &most) {
    bool changed = false;
    for (std::size_t priced = 0; priced < counts.size(); ++priced) {
      const SideLimits &limits = choice.limits[priced];
      Nano &price = choice.eased[priced];
      if (counts[priced] < limits.fewest)
        most[priced] = price;
      else if (counts[priced] > limits.most)
        least[priced] = price;
      else if (price != 0)
        (price < 0 ? least : most)[priced] = price;
      else
        continue;
      const Nano next = least[priced] + (most[priced] - least[priced]) / 2;
      changed = changed || next != price;
      price = next;
    }
    return changed;
  }

  bool weigh(Choice &choice) {
    Costs eased;
    Task as_eased = choice.task;
    const Nano without = choice.task.beside;
    look(choice, eased);
    as_eased.costs = eased;
    as_eased.beside = without;
    for (std::size_t priced = 0; priced < choice.eased.size(); ++priced)
      if (const Nano price = choice.eased[priced]; price != 0)
        as_eased.beside -=
            price * (price < 0 ? choice.limits[priced].fewest : choice.limits[priced].most);
    return weigh_outcomes(as_eased, space, layers, full_cost, effort, best, choice.limits);
  }
};

} // namespace

bool weigh_steps(const Task &task, OrderSpace &space, Layers &layers, const FullCost &full_cost,
                 const Effort &effort, Arranged &best) {
  Looking looking{task, space, layers, full_cost, effort, best};
  std::vector<Choice> choices = choices_of(task);
  for (Choice &choice : choices)
    looking.first_look(choice);
  std::ranges::stable_sort(choices, {}, &Choice::bound);
  bool all = true;
  Nano bound = std::numeric_limits<Nano>::max();
  for (Choice &choice : choices) {
    if (looking.open(choice))
      looking.tighten(choice);
    if (looking.open(choice) && !looking.weigh(choice)) {
      all = false;
      bound = std::min(bound, choice.bound);
    }
  }
  space.price_by(task.costs);
  best.bound = std::max(best.bound, std::min(bound, best.cost));
  return all || best.cost <= best.bound + no_money;
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
