#include "money/arranging_prices.hpp"

#include "measure/limits.hpp"
#include "money/charge.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace bodkin::arranging {
namespace {

Exact with_tax(const Machine &machine, const Exact &price) {
  return machine.tax ? price * (Exact(1) + Exact(**machine.tax)) : price;
}

} // namespace

std::vector<RunStep> run_steps(const Edition &edition, const Machine &machine, Mode mode,
                               const SideRange &run) {
  std::map<std::int64_t, Exact> rates; // of two lines alike the later counts
  for (const SidePrice &price : first_of(machine.prints, limits::price_steps))
    if (price.mode == mode && counts(edition, price.rate.price.currency))
      rates.insert_or_assign(price.from_sides,
                             with_tax(machine, price_of_one(edition, price.rate)));
  std::vector<RunStep> steps;
  for (const auto &[from, rate] : rates) {
    if (from > run.most)
      break;
    if (!steps.empty())
      steps.back().before = from;
    steps.push_back({from, 0, rate});
  }
  std::erase_if(steps, [&](const RunStep &step) {
    return step.before != 0 && step.before <= std::max<std::int64_t>(run.fewest, 1);
  });
  return steps;
}

Exact least_for_side(const Edition &edition, const Machine &machine, const Size &sheet, Mode mode,
                     const SideRange &run) {
  const auto steps = first_of(machine.prints, limits::price_steps);
  const bool by_size = std::ranges::any_of(steps, [&](const SidePrice &price) {
    return price.mode == mode && price.size && price.size->upright() == sheet;
  });
  std::int64_t always_reached = 0;
  const auto speaks = [&](const SidePrice &price) {
    return price.mode == mode && price.size.has_value() == by_size &&
           (!by_size || price.size->upright() == sheet) &&
           counts(edition, price.rate.price.currency);
  };
  for (const SidePrice &price : steps)
    if (speaks(price) && price.from_sides <= run.fewest)
      always_reached = std::max(always_reached, price.from_sides);
  std::optional<Exact> least;
  for (const SidePrice &price : steps) {
    if (!speaks(price) || price.from_sides < always_reached || price.from_sides > run.most)
      continue;
    const Exact rate = price_of_one(edition, price.rate);
    if (!least || rate < *least)
      least = rate;
  }
  if (!least)
    return {};
  return with_tax(machine, *least);
}

Exact setup_at_least(const Edition &edition, const Machine &machine) {
  if (!machine.setup || !counts(edition, (*machine.setup)->price.currency))
    return {};
  return with_tax(machine, price_of_one(edition, **machine.setup));
}

Exact least_of_run(const Edition &edition, const Machine &machine) {
  if (!machine.least || !counts(edition, (*machine.least)->price.currency))
    return {};
  return with_tax(machine, price_of_one(edition, **machine.least));
}

Exact price_of_sheet(const Edition &edition, const Stock &stock) {
  if (stock.included || !stock.costs || !counts(edition, (*stock.costs)->price.currency))
    return {};
  return price_of_one(edition, **stock.costs) / Exact(stock.cut_from ? (*stock.cut_from)->out : 1);
}

} // namespace bodkin::arranging
