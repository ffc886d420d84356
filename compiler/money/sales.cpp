#include "money/sales.hpp"

#include "money/charge.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr bool a_copy(const Rate &rate) { return rate.per == Per::copy || rate.per == Per::each; }

// The fewest copies that bring in so much; none where they bring nothing, or were never enough.
std::optional<std::int64_t> copies_for(const Exact &money, const Exact &brings, std::int64_t most) {
  if (money <= Exact())
    return 0;
  if (brings <= Exact())
    return std::nullopt;
  const std::int64_t copies = (money / brings).ceiling();
  return copies <= most ? std::optional(copies) : std::nullopt;
}

struct Counting {
  const Edition &edition;
  const Estimate &estimate;
  Sales out{};

  // Nothing where no price is written, or in money that does not count.
  std::optional<Exact> price_of(const Sale &sale) const {
    if (sale.price && counts(edition, (*sale.price)->price.currency))
      return price_of_one(edition, **sale.price);
    if (!sale.price && sale.only)
      return estimate.runs[**sale.only].price;
    if (!sale.price && edition.price && counts(edition, (*edition.price)->currency))
      return in_own_money(edition, **edition.price);
    return std::nullopt;
  }

  void way(const Sale &sale, std::int64_t to_sell) {
    const auto price = price_of(sale);
    out.sold += sale.copies;
    if (!price)
      return;
    SaleFigures way;
    way.where = sale.where;
    way.from = sale.range;
    way.makes = estimate.per_copy;
    if (sale.only) {
      const RunFigures &run = estimate.runs[**sale.only];
      way.run = run.name;
      way.makes = run.per_copy;
      to_sell = std::min(to_sell, run.copies);
    }
    way.copies = sale.copies;
    way.price = *price;
    if (sale.share)
      way.keeps = way.price * Exact(**sale.share);
    if (sale.costs && counts(edition, (*sale.costs)->price.currency))
      (a_copy(**sale.costs) ? way.costs : way.costs_once) = price_of_one(edition, **sale.costs);
    way.brings = way.price - way.keeps - way.costs;
    way.margin = way.brings - way.makes;
    if (way.copies > 0)
      way.income = way.brings * Exact(way.copies) - way.costs_once;
    way.paid_after = copies_for(estimate.run_total + way.costs_once, way.brings, to_sell);
    out.income += way.income;
    out.ways.push_back(std::move(way));
  }

  // In the order of the lines: what each way brings is counted off what the run still owes.
  void pay_off() {
    Exact owed = estimate.run_total;
    std::int64_t sold = 0;
    for (const SaleFigures &way : out.ways) {
      if (way.copies == 0)
        continue;
      const auto enough = copies_for(owed + way.costs_once, way.brings, way.copies);
      if (enough) {
        out.paid_after = sold + *enough;
        return;
      }
      owed -= way.income;
      sold += way.copies;
    }
  }
};

} // namespace

bool is_for(PaidFor what, Group group) {
  switch (what) {
  case PaidFor::printing:
    return group == Group::printing || group == Group::tax;
  case PaidFor::paper:
    return group == Group::paper;
  case PaidFor::work:
    return group == Group::hand || group == Group::finish || group == Group::other;
  case PaidFor::everything:
    break;
  }
  return true;
}

namespace {

Exact of_all(const Estimate &estimate, PaidFor what) {
  Exact total;
  for (const EstimateLine &line : estimate.lines)
    if (is_for(what, line.group))
      total += line.total;
  return total;
}

// Of a line of paper, what leaves the purse for it: its share of the packs that are bought.
Exact bought_for(const Estimate &estimate, const EstimateLine &line) {
  for (const Purchase &paper : estimate.purchases)
    if (!paper.needed.is_zero() &&
        (line.what == paper.what || line.what.starts_with(paper.what + ",")))
      return paper.total() * line.quantity / paper.needed;
  return line.total;
}

// What one run alone has: lines of its own.
Exact of_run(const Estimate &estimate, PaidFor what, std::uint32_t run) {
  Exact total;
  for (const EstimateLine &line : estimate.lines)
    if (line.only == RunSet(run) && (what == PaidFor::everything || is_for(what, line.group)))
      total += line.group == Group::paper ? bought_for(estimate, line) : line.total;
  return total;
}

Exact papers_bought(const Estimate &estimate) {
  Exact total;
  for (const Purchase &paper : estimate.purchases)
    total += paper.total();
  return total;
}

} // namespace

std::optional<Sales> sales_of(const Edition &edition, const Estimate &estimate) {
  if (edition.sales.empty() && edition.gifts.empty())
    return std::nullopt;
  Counting counting{edition, estimate};
  for (const Gift &gift : edition.gifts)
    counting.out.given += gift.copies;
  for (const Sale &sale : edition.sales)
    counting.way(sale, std::max<std::int64_t>(estimate.copies - counting.out.given, 0));
  Sales &out = counting.out;
  out.left = estimate.copies - out.sold - out.given;
  out.remains = out.income - estimate.run_total;
  counting.pay_off();
  return std::move(out);
}

namespace {

std::string name_of(PaidFor what) {
  switch (what) {
  case PaidFor::printing:
    return "printing";
  case PaidFor::paper:
    return "paper";
  case PaidFor::work:
    return "work";
  case PaidFor::everything:
    break;
  }
  return "everything";
}

Exact estimated_for(const Estimate &estimate, const Paid &paid) {
  if (paid.only)
    return of_run(estimate, paid.what, **paid.only);
  if (paid.what == PaidFor::everything)
    return estimate.purse_total;
  return paid.what == PaidFor::paper ? papers_bought(estimate) : of_all(estimate, paid.what);
}

} // namespace

std::vector<PaidFigures> paid_of(const Edition &edition, const Estimate &estimate) {
  std::vector<PaidFigures> all;
  for (const Paid &paid : edition.paid) {
    if (!counts(edition, paid.amount.currency))
      continue;
    const RunSet run = paid.only ? RunSet(**paid.only) : RunSet();
    PaidFigures figures{name_of(paid.what) + alone_in(edition, run),
                        paid.range,
                        in_own_money(edition, paid.amount),
                        estimated_for(estimate, paid),
                        paid.what,
                        run};
    // Two bills of one kind are held against the estimate together.
    const auto same = std::find_if(all.begin(), all.end(), [&](const PaidFigures &other) {
      return other.what == figures.what;
    });
    if (same != all.end())
      same->paid += figures.paid;
    else
      all.push_back(std::move(figures));
  }
  return all;
}

} // namespace bodkin
