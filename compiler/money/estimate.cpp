#include "money/estimate.hpp"

#include "money/bids.hpp"
#include "money/crossings.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

struct Adding {
  Estimate &out;

  void line(const Charge &charge) {
    EstimateLine line{charge.what, charge.group, charge.amount.of(out.copies, out.spare),
                      charge.rate, {},           charge.from};
    line.total = line.quantity * line.rate;
    out.run_total += line.total;
    if (charge.order)
      purchase(charge, line.quantity);
    else
      out.purse_total += line.total;
    out.lines.push_back(std::move(line));
  }

  // A paper that several lines speak of is bought once.
  void purchase(const Charge &charge, const Exact &quantity) {
    const auto same = [&](const Purchase &other) { return other.what == charge.what; };
    const auto known = std::ranges::find_if(out.purchases, same);
    if (known != out.purchases.end())
      known->needed += quantity;
    else
      out.purchases.push_back({charge.what, quantity, *charge.order});
  }

  void pay_for_papers() {
    for (const Purchase &bought : out.purchases)
      out.purse_total += bought.total();
  }

  void lines(const std::vector<Charge> &charges) {
    for (const Charge &charge : charges)
      line(charge);
  }

  void leave_out(const std::vector<Unpriced> &unpriced) {
    out.unpriced.insert(out.unpriced.end(), unpriced.begin(), unpriced.end());
  }
};

void add_jobs(Adding &adding, const std::vector<Job> &jobs) {
  for (const Group group : {Group::hand, Group::finish, Group::other})
    for (const Job &job : jobs)
      if (job.group == group) {
        adding.lines(job.charges);
        adding.leave_out(job.unpriced);
        adding.out.minutes += job.minutes.of(adding.out.copies, adding.out.spare);
      }
}

std::optional<BudgetHeld> held(const Edition &edition, const Estimate &estimate) {
  if (!edition.budget || !same_money(*edition.currency, (*edition.budget)->limit.currency))
    return std::nullopt;
  const Budget &budget = **edition.budget;
  BudgetHeld held{Exact(budget.limit.amount), budget.of_run, false, {}, edition.budget->from};
  const Exact &cost = budget.of_run ? estimate.run_total : estimate.per_copy;
  held.over = cost > held.limit;
  if (held.over)
    held.over_by = cost - held.limit;
  return held;
}

// Where something of one's own has no price there is nothing true to compare.
Comparison compared(const Edition &edition, const Bill &bill, const Estimate &estimate) {
  const bool all_priced = std::ranges::all_of(estimate.unpriced, [](const Unpriced &thing) {
    return thing.reason == Unpriced::Reason::below_least_step;
  });
  if (!all_priced || edition.bids.empty())
    return {};
  std::vector<Way> ways{own_way(edition, bill)};
  for (std::size_t i = 0; i < estimate.bids.size(); ++i)
    if (!estimate.bids[i].lacks_a_mode)
      ways.push_back(like_for_like_way(edition, edition.bids[i], bill));
  return compare(ways);
}

} // namespace

std::int64_t Purchase::missing() const {
  return std::max<std::int64_t>(needed.ceiling() - order.have, 0);
}

std::int64_t Purchase::bought() const {
  return (missing() + order.out - 1) / std::max(order.out, 1);
}

std::int64_t Purchase::packs() const {
  return order.pack > 0 ? (bought() + order.pack - 1) / order.pack : 0;
}

Exact Purchase::total() const { return Exact(order.pack > 0 ? packs() : bought()) * order.price; }

Estimate estimate(const Edition &edition, const Imposition &imposition, const ChargedSides &sides) {
  const Bill used = bill(edition, imposition, sides, jobs(edition, imposition));
  Estimate out;
  out.currency = *edition.currency;
  out.copies = edition.run->copies;
  out.spare = edition.run->spare;
  const Printing printed = printing(edition, used.sides, out.copies + out.spare);
  Adding adding{out};
  adding.lines(printed.charges);
  adding.lines(printed.taxes);
  adding.leave_out(printed.unpriced);
  adding.lines(used.papers);
  adding.leave_out(used.unpriced_papers);
  adding.pay_for_papers();
  add_jobs(adding, used.jobs);
  out.per_copy = out.run_total / Exact(out.copies);
  out.one_more_copy = own_stretch(edition, used, out.copies).each;
  out.budget = held(edition, out);
  out.bids = bid_figures(edition, imposition, used);
  Comparison comparison = compared(edition, used, out);
  out.cheapest_at_one_copy = std::move(comparison.at_one_copy);
  out.crossings = std::move(comparison.crossings);
  return out;
}

} // namespace bodkin
