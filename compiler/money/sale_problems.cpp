#include "money/sale_problems.hpp"

#include "money/money_lines.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem more_than_made(const Edition &edition, const Estimate &estimate) {
  const Sales &sales = *estimate.sales;
  const Range last =
      edition.sales.empty() ? edition.gifts.back().range : edition.sales.back().range;
  Problem problem;
  problem.check = "more-than-made";
  problem.range = last;
  problem.message = fmt::format("{} copies are sold and {} given away, and {} are made", sales.sold,
                                sales.given, estimate.copies);
  problem.why = "a copy goes to one reader; spares are those that go wrong";
  if (edition.runs.empty() && edition.run.from.somewhere())
    problem.type = {{fmt::format("run        {} copies", sales.sold + sales.given),
                     "or fewer in one of these lines"}};
  else
    problem.type = {{{}, "make more, or promise fewer"}};
  problem.related = {{edition.run.from, "what is made"}};
  return problem;
}

Problem no_sale_price(const Estimate &estimate, const Sale &sale) {
  return {.check = "no-sale-price",
          .range = sale.range,
          .message = fmt::format("what is a copy sold for {}?", sale.where),
          .why = "neither this line nor the edition says a price",
          .type = {{fmt::format("price      {} a copy", money_to_fill_in(estimate.currency)),
                    "under edition; or `at` and a price in this line"}}};
}

Problem sold_at_loss(const Estimate &estimate, const SaleFigures &way) {
  const Currency currency = estimate.currency;
  const Exact nothing;
  const Exact even = way.keeps.is_zero() || way.price.is_zero()
                         ? estimate.per_copy + way.costs
                         : (estimate.per_copy + way.costs) / (nothing + 1 - way.keeps / way.price);
  return {.kind = Kind::warning,
          .check = "sold-at-loss",
          .range = way.from,
          .message = fmt::format("a copy sold {} brings {}, and costs {} to make", way.where,
                                 shown(way.brings, currency), shown(estimate.per_copy, currency)),
          .why = fmt::format("of {} the seller keeps {} and the sale costs {}",
                             shown(way.price, currency), shown(way.keeps, currency),
                             shown(way.costs, currency)),
          .type = {{{},
                    fmt::format("it covers the copy from {} on, or where the run costs less",
                                shown(Exact::ratio((even * 100).ceiling(), 100), currency))}}};
}

bool priced(const Edition &edition, const Sale &sale) { return sale.price || edition.price; }

} // namespace

void judge_sales(Problems &problems, const Edition &edition, const Estimate &estimate) {
  if (!estimate.sales)
    return;
  if (estimate.sales->left < 0)
    problems.push_back(more_than_made(edition, estimate));
  for (const Sale &sale : edition.sales)
    if (!priced(edition, sale))
      problems.push_back(no_sale_price(estimate, sale));
  for (const SaleFigures &way : estimate.sales->ways)
    if (way.margin < Exact())
      problems.push_back(sold_at_loss(estimate, way));
}

} // namespace bodkin
