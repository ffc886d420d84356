#include "money/arranging_prices.hpp"

#include "measure/limits.hpp"
#include "money/charge.hpp"

#include <algorithm>
#include <optional>

namespace bodkin::arranging {
namespace {

Size upright(const Size &size) { return size.width > size.height ? size.turned() : size; }

} // namespace

Exact least_for_side(const Edition &edition, const Machine &machine, const Size &sheet, Mode mode,
                     const SideRange &run) {
  const auto steps = first_of(machine.prints, limits::price_steps);
  const bool by_size = std::ranges::any_of(steps, [&](const SidePrice &price) {
    return price.mode == mode && price.size && upright(*price.size) == sheet;
  });
  std::int64_t always_reached = 0;
  const auto speaks = [&](const SidePrice &price) {
    return price.mode == mode && price.size.has_value() == by_size &&
           (!by_size || upright(*price.size) == sheet) &&
           same_money(*edition.currency, price.rate.price.currency);
  };
  for (const SidePrice &price : steps)
    if (speaks(price) && price.from_sides <= run.fewest)
      always_reached = std::max(always_reached, price.from_sides);
  std::optional<Exact> least;
  for (const SidePrice &price : steps) {
    if (!speaks(price) || price.from_sides < always_reached || price.from_sides > run.most)
      continue;
    const Exact rate = price_of_one(price.rate);
    if (!least || rate < *least)
      least = rate;
  }
  if (!least)
    return {};
  return machine.tax ? *least * (Exact(1) + Exact(**machine.tax)) : *least;
}

Exact price_of_sheet(const Edition &edition, const Stock &stock) {
  if (stock.included || !stock.costs ||
      !same_money(*edition.currency, (*stock.costs)->price.currency))
    return {};
  return price_of_one(**stock.costs) / Exact(stock.cut_from ? (*stock.cut_from)->out : 1);
}

} // namespace bodkin::arranging
