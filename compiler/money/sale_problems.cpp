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
                         ? way.makes + way.costs
                         : (way.makes + way.costs) / (nothing + 1 - way.keeps / way.price);
  return {.kind = Kind::warning,
          .check = "sold-at-loss",
          .range = way.from,
          .message = fmt::format("a copy sold {} brings {}, and costs {} to make", way.where,
                                 shown(way.brings, currency), shown(way.makes, currency)),
          .why = fmt::format("of {} the seller keeps {} and the sale costs {}",
                             shown(way.price, currency), shown(way.keeps, currency),
                             shown(way.costs, currency)),
          .type = {{{},
                    fmt::format("it covers the copy from {} on, or where the run costs less",
                                shown(Exact::ratio((even * 100).ceiling(), 100), currency))}}};
}

bool priced(const Edition &edition, const Sale &sale) {
  return sale.price || edition.price || (sale.only && edition.runs[**sale.only].price);
}

// Of one run's copies alone.
Problem more_than_the_run(const Sale &sale, std::int64_t sold, const NamedRun &run) {
  return {.check = "more-than-made",
          .range = sale.range,
          .message =
              fmt::format("{} copies {} are sold, and {} are made", sold, run.name, run.run.copies),
          .why = "a copy goes to one reader; spares are those that go wrong",
          .type = {{fmt::format("run        {} copies called {}", sold, run.name),
                    "or fewer in one of these lines"}},
          .related = {{run.range, "what is made"}}};
}

void judge_runs(Problems &problems, const Edition &edition) {
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run) {
    std::int64_t sold = 0;
    const Sale *last = nullptr;
    for (const Sale &sale : edition.sales)
      if (sale.only && **sale.only == run) {
        sold += sale.copies;
        last = &sale;
      }
    if (last && sold > edition.runs[run].run.copies)
      problems.push_back(more_than_the_run(*last, sold, edition.runs[run]));
  }
}

} // namespace

void judge_sales(Problems &problems, const Edition &edition, const Estimate &estimate) {
  if (!estimate.sales)
    return;
  if (estimate.sales->left < 0)
    problems.push_back(more_than_made(edition, estimate));
  judge_runs(problems, edition);
  for (const Sale &sale : edition.sales)
    if (!priced(edition, sale))
      problems.push_back(no_sale_price(estimate, sale));
  for (const SaleFigures &way : estimate.sales->ways)
    if (way.margin < Exact())
      problems.push_back(sold_at_loss(estimate, way));
}

} // namespace bodkin
