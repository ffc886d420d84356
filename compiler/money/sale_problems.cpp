#include "money/sale_problems.hpp"

#include "money/charge.hpp"
#include "money/money_lines.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem more_than_made(const Edition &edition, const Estimate &estimate, const Sources &sources) {
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
    problem.type = {{line_with_first_number(sources, edition.run.from, sales.sold + sales.given),
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

// To whole cents, so that it is enough.
std::string enough(const Exact &money, Currency currency) {
  return shown(Exact::ratio((money * 100).ceiling(), 100), currency);
}

std::string what_covers(const SaleFigures &way, Currency currency) {
  const Exact needed = way.makes + way.costs;
  if (!way.keeps.is_zero() && way.keeps == way.price)
    return "whoever keeps the whole price pays for no copy: agree on a share that leaves you some";
  const Exact left = way.keeps.is_zero() ? Exact(1) : Exact(1) - way.keeps / way.price;
  return fmt::format("it covers the copy from {} on, or where the run costs less",
                     enough(needed / left, currency));
}

Problem sold_at_loss(const Estimate &estimate, const SaleFigures &way) {
  const Currency currency = estimate.currency;
  const std::string brings =
      way.brings < Exact()
          ? fmt::format("costs {} more than it brings", shown(Exact() - way.brings, currency))
          : fmt::format("brings {}", shown(way.brings, currency));
  return {.kind = Kind::warning,
          .check = "sold-at-loss",
          .range = way.from,
          .message = fmt::format("a copy sold {} {}, and costs {} to make", way.where, brings,
                                 shown(way.makes, currency)),
          .why = fmt::format("of {} the seller keeps {} and the sale costs {}",
                             shown(way.price, currency), shown(way.keeps, currency),
                             shown(way.costs, currency)),
          .type = {{{}, what_covers(way, currency)}}};
}

// The price on the copy itself; what is given away for nothing is meant so.
void judge_price(Problems &problems, const Estimate &estimate, const Exact &price, Range from,
                 const Exact &makes, const std::string &run) {
  if (price.is_zero() || price >= makes || !from.somewhere())
    return;
  const Currency currency = estimate.currency;
  problems.push_back({.kind = Kind::warning,
                      .check = "sold-at-loss",
                      .range = from,
                      .message = fmt::format("a copy{} sold for {} costs {} to make", run,
                                             shown(price, currency), shown(makes, currency)),
                      .why = fmt::format("{} is missing of each", shown(makes - price, currency)),
                      .type = {{fmt::format("price      {} a copy", enough(makes, currency)),
                                "covers the copy, and leaves nothing for a shop or the post"}}});
}

void judge_prices(Problems &problems, const Edition &edition, const Estimate &estimate) {
  if (!estimate.unpriced.empty())
    return;
  const bool each =
      std::ranges::any_of(edition.runs, [](const NamedRun &run) { return run.price.has_value(); });
  if (each)
    for (const RunFigures &run : estimate.runs) {
      if (run.price)
        judge_price(problems, estimate, *run.price, run.price_from, run.per_copy, " " + run.name);
    }
  else if (edition.price && counts(edition, (*edition.price)->currency))
    judge_price(problems, estimate, in_own_money(edition, **edition.price), edition.price->from,
                estimate.per_copy, "");
}

Problem idle_labour(const Edition &edition) {
  return {.kind = Kind::note,
          .check = "idle-labour",
          .range = edition.labour->from,
          .message = "an hour of work is paid, and no work says how long it takes",
          .why =
              "hours are added up from `takes` under what is done by hand and under the steps of "
              "finish; without one this line adds nothing",
          .type = {{"takes      20 s a copy", "under a `hand`, or under a step of finish"}}};
}

bool priced(const Edition &edition, const Sale &sale) {
  return sale.price || edition.price || (sale.only && edition.runs[**sale.only].price);
}

// Of one run's copies alone.
Problem more_than_the_run(const Sale &sale, std::int64_t sold, const NamedRun &run,
                          const Sources &sources) {
  return {.check = "more-than-made",
          .range = sale.range,
          .message =
              fmt::format("{} copies {} are sold, and {} are made", sold, run.name, run.run.copies),
          .why = "a copy goes to one reader; spares are those that go wrong",
          .type = {{line_with_first_number(sources, run.range, sold),
                    "or fewer in one of these lines"}},
          .related = {{run.range, "what is made"}}};
}

void judge_runs(Problems &problems, const Edition &edition, const Sources &sources) {
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run) {
    std::int64_t sold = 0;
    const Sale *last = nullptr;
    for (const Sale &sale : edition.sales)
      if (sale.only && **sale.only == run) {
        sold += sale.copies;
        last = &sale;
      }
    if (last && sold > edition.runs[run].run.copies)
      problems.push_back(more_than_the_run(*last, sold, edition.runs[run], sources));
  }
}

} // namespace

void judge_sales(Problems &problems, const Edition &edition, const Estimate &estimate,
                 const Sources &sources) {
  judge_prices(problems, edition, estimate);
  if (edition.labour && estimate.minutes.is_zero())
    problems.push_back(idle_labour(edition));
  if (!estimate.sales)
    return;
  if (estimate.sales->left < 0)
    problems.push_back(more_than_made(edition, estimate, sources));
  judge_runs(problems, edition, sources);
  for (const Sale &sale : edition.sales)
    if (!priced(edition, sale))
      problems.push_back(no_sale_price(estimate, sale));
  for (const SaleFigures &way : estimate.sales->ways)
    if (way.margin < Exact())
      problems.push_back(sold_at_loss(estimate, way));
}

} // namespace bodkin
