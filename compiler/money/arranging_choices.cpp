#include "money/arranging_choices.hpp"

#include <algorithm>

namespace bodkin::arranging {
namespace {

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

// The dearest that what limits count as one is, in any run or in all of them.
Nano price_of_side(const Costs &costs, std::size_t priced) {
  Nano all = 0, price = 0;
  std::int64_t sides = 0;
  for (const RunCosts &run : costs.runs) {
    all += run.side[priced];
    sides += run.sides;
    if (run.sides > 0)
      price = std::max(price, run.side[priced] / run.sides);
  }
  return std::max(price, all / std::max<std::int64_t>(sides, 1)) + 1;
}

} // namespace

Costs Choice::eased_costs() const {
  Costs costs = task.costs;
  for (std::size_t priced = 0; priced < eased.size(); ++priced)
    if (eased[priced] != 0)
      price_side(costs, priced, eased[priced]);
  return costs;
}

Nano Choice::eased_beside() const {
  Nano beside = task.beside;
  for (std::size_t priced = 0; priced < eased.size(); ++priced)
    if (const Nano price = eased[priced]; price != 0)
      beside -= price * (price < 0 ? limits[priced].fewest : limits[priced].most);
  return beside;
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

Easing::Easing(const Task &task, const Choice &choice)
    : least_(choice.eased.size()), most_(choice.eased.size()) {
  for (std::size_t priced = 0; priced < least_.size(); ++priced)
    if (task.price_steps[priced].size() > 1) {
      // Beyond no limit there is no side to pay for, and below none no side to pay back.
      const Nano price = price_of_side(choice.task.costs, priced);
      most_[priced].price = choice.limits[priced].most == no_limit ? 0 : price * 2;
      least_[priced].price = choice.limits[priced].fewest <= 0 ? 0 : -price;
    }
}

Nano Easing::between(const Tried &least, const Tried &most) {
  const Nano middle = least.price + (most.price - least.price) / 2;
  if (!least.known || !most.known || least.sides <= most.sides)
    return middle;
  const Nano level = (most.without - least.without) / (least.sides - most.sides);
  return level <= least.price || level >= most.price ? middle : level;
}

bool Easing::ease(Choice &choice, const std::vector<std::int64_t> &counts, Nano cost) {
  bool changed = false;
  for (std::size_t priced = 0; priced < counts.size(); ++priced) {
    const SideLimits &limits = choice.limits[priced];
    Nano &price = choice.eased[priced];
    const Tried now{price, true, cost - price * counts[priced], counts[priced]};
    if (counts[priced] < limits.fewest)
      most_[priced] = now;
    else if (counts[priced] > limits.most)
      least_[priced] = now;
    else if (price != 0)
      (price < 0 ? least_ : most_)[priced] = now;
    else
      continue;
    const Nano next = between(least_[priced], most_[priced]);
    changed = changed || next != price;
    price = next;
  }
  return changed;
}

} // namespace bodkin::arranging
