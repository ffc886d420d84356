#include "money/estimate.hpp"

#include "edition/copy_numbers.hpp"
#include "money/bids.hpp"
#include "money/crossings.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

struct Adding {
  Estimate &out;

  void line(const Charge &charge) {
    EstimateLine line{charge.what, charge.group, charge.amount.of(out.copies, out.spare),
                      charge.rate, {},           charge.from};
    if (charge.in_one_sum) {
      line.rate *= line.quantity;
      line.quantity = 1;
    }
    line.total = line.quantity * line.rate;
    line.only = charge.only;
    out.run_total += line.total;
    if (charge.order)
      purchase(charge, line.quantity);
    else
      out.purse_total += line.total;
    out.lines.push_back(std::move(line));
  }

  // A paper that several lines speak of is bought once.
  void purchase(const Charge &charge, const Exact &quantity) {
    const auto same = [&](const Purchase &other) { return other.what == charge.bought_as; };
    const auto known = std::ranges::find_if(out.purchases, same);
    if (known != out.purchases.end())
      known->needed += quantity;
    else
      out.purchases.push_back({charge.bought_as, quantity, *charge.order});
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
        adding.leave_out(job.unpriced);
        adding.out.minutes += job.minutes.of(adding.out.copies, adding.out.spare);
        if (!job.kept.is_zero())
          adding.out.kept.push_back(
              fmt::format("{}: {}", job.what, shown(job.kept, adding.out.currency)));
      }
}

void add_machine_times(Estimate &out, const Edition &edition, const SideCounts &counts) {
  for (const SideCount &count : counts.printed) {
    const Machine &machine = edition[count.machine];
    if (!machine.speed)
      continue;
    const Exact sides = count.of(out.copies + out.spare);
    auto known = std::ranges::find(out.machines, machine.name, &MachineTime::machine);
    if (known == out.machines.end())
      known = out.machines.insert(out.machines.end(), {machine.name, {}, {}});
    known->sides += sides;
    known->minutes += sides / Exact(**machine.speed);
  }
}

void add_runs(Estimate &out, const Edition &edition) {
  if (edition.runs.empty())
    return;
  for (std::uint32_t i = 0; i < edition.runs.size(); ++i) {
    const NamedRun &run = edition.runs[i];
    Exact a_copy;
    for (const EstimateLine &line : out.lines)
      if (line.only.holds(i))
        a_copy += line.total / Exact(copies_of(edition, line.only).good);
    out.runs.push_back({run.name, run.run.copies, run.run.spare, a_copy});
    const auto &price = run.price ? run.price : edition.price;
    if (price && counts(edition, (*price)->currency)) {
      out.runs.back().price = in_own_money(edition, **price);
      out.runs.back().price_from = price->from;
    }
  }
}

std::optional<BudgetHeld> held(const Edition &edition, const Estimate &estimate) {
  if (!edition.budget || !counts(edition, (*edition.budget)->limit.currency))
    return std::nullopt;
  const Budget &budget = **edition.budget;
  BudgetHeld held{
      in_own_money(edition, budget.limit), budget.of_run, false, {}, edition.budget->from};
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
  return compare(ways_to_make(edition, bill, estimate.bids), fewest_copies(edition));
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
  adding.lines(charges_of(edition, used, printed));
  adding.leave_out(printed.unpriced);
  adding.leave_out(used.unpriced_papers);
  adding.pay_for_papers();
  add_jobs(adding, used.jobs);
  add_machine_times(out, edition, used.sides);
  add_runs(out, edition);
  out.per_copy = out.run_total / Exact(out.copies);
  out.one_more_copy = own_stretch(edition, used, out.copies).each;
  out.budget = held(edition, out);
  out.bids = bid_figures(edition, imposition, used);
  Comparison comparison = compared(edition, used, out);
  out.cheapest_at_one_copy = std::move(comparison.at_one_copy);
  out.crossings = std::move(comparison.crossings);
  out.sales = sales_of(edition, out);
  out.paid = paid_of(edition, out);
  return out;
}

} // namespace bodkin
