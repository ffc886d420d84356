#include "money/offers.hpp"

#include "measure/limits.hpp"
#include "money/bids.hpp"
#include "money/money_lines.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <utility>

namespace bodkin {
namespace {

Problem empty_bid(const Edition &edition, const Bid &bid) {
  return {.kind = Kind::warning,
          .check = "empty-bid",
          .range = bid.range,
          .message = fmt::format("{} names no price, so it is compared with nothing", bid.name),
          .why = "an offer is what each copy costs, from a number of copies on",
          .type = {{fmt::format("copies     {} at {} a copy", edition.run->copies,
                                money_to_fill_in(*edition.currency)),
                    fmt::format("below bid {}", bid.name)}}};
}

Problem offer_ended(const Edition &edition, const Bid &bid) {
  return {.kind = Kind::warning,
          .check = "offer-ended",
          .range = bid.until->from,
          .message = fmt::format("this offer ended {}, and the edition is dated {}",
                                 written(**bid.until), written(**edition.dated)),
          .why = "a price that no longer holds is listed, and compared with nothing",
          .type = {{{}, "ask for a new offer, or take the bid out"}},
          .related = {{edition.dated->from, "the edition's date"}}};
}

// A price from so many on, as written in any money.
struct PriceStep {
  std::int64_t from = 1;
  Exact price;
  Range range;
};

Problem rising_price(const Edition &edition, const PriceStep &low, const PriceStep &high,
                     std::string_view things) {
  const Currency currency = *edition.currency;
  return {.kind = Kind::warning,
          .check = "rising-price",
          .range = high.range,
          .message = fmt::format("from {} {} on each costs {}, more than the {} from {} on",
                                 high.from, things, shown(high.price, currency, 6),
                                 shown(low.price, currency, 6), low.from),
          .why = "prices fall as a run grows; a step that rises is often two lines changed about, "
                 "or a point left out",
          .type = {{{}, "look at the price list again"}},
          .related = {
              {low.range, fmt::format("{} from {} on", shown(low.price, currency, 6), low.from)}}};
}

void judge_steps(Problems &problems, const Edition &edition, std::vector<PriceStep> steps,
                 std::string_view things) {
  std::ranges::stable_sort(steps, {}, &PriceStep::from);
  for (std::size_t i = 1; i < steps.size(); ++i)
    if (steps[i].from > steps[i - 1].from && steps[i].price > steps[i - 1].price)
      problems.push_back(rising_price(edition, steps[i - 1], steps[i], things));
}

void judge_bid(Problems &problems, const Edition &edition, const Bid &bid) {
  if (bid.steps.empty())
    problems.push_back(empty_bid(edition, bid));
  if (bid.until && edition.dated && surely_before(**bid.until, **edition.dated))
    problems.push_back(offer_ended(edition, bid));
  std::vector<PriceStep> steps;
  for (const BidStep &step : first_of(bid.steps, limits::price_steps))
    if (step.rate.per == Per::copy || step.rate.per == Per::each)
      steps.push_back({step.from_copies, price_of_one(edition, step.rate), step.range});
  judge_steps(problems, edition, std::move(steps), "copies");
}

void judge_machine(Problems &problems, const Edition &edition, const Machine &machine) {
  std::map<std::pair<Mode, std::optional<Size>>, std::vector<PriceStep>> lists;
  for (const SidePrice &price : first_of(machine.prints, limits::price_steps))
    lists[{price.mode, price.size}].push_back(
        {price.from_sides, price_of_one(edition, price.rate), price.range});
  for (auto &[list, steps] : lists)
    judge_steps(problems, edition, std::move(steps), "sides");
}

} // namespace

void judge_offers(Problems &problems, const Edition &edition, const Sources &sources) {
  for (const Bid &bid : compared_bids(edition))
    judge_bid(problems, edition, bid);
  for (const Machine &machine : edition.machines)
    if (machine.range.somewhere() && !sources.is_shelf(machine.range.file))
      judge_machine(problems, edition, machine);
}

} // namespace bodkin
