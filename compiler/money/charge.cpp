#include "money/charge.hpp"

#include "edition/copy_numbers.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {

Amount operator+(Amount a, const Amount &b) {
  a.printed += b.printed;
  a.good += b.good;
  a.once += b.once;
  a.of_spares += b.of_spares;
  return a;
}

Amount operator*(Amount a, const Exact &times) {
  a.printed *= times;
  a.good *= times;
  a.once *= times;
  a.of_spares *= times;
  return a;
}

Exact InWhole::unused(std::int64_t printed) const {
  const Exact needed = each * Exact(printed) + once;
  return (Exact(needed.ceiling()) - needed) * alike;
}

void add_whole(std::vector<InWhole> &all, const InWhole &more) {
  const auto is_whole = [](const Exact &number) { return Exact(number.floor()) == number; };
  if (is_whole(more.each) && is_whole(more.once))
    return;
  for (InWhole &known : all)
    if (known.each == more.each && known.once == more.once) {
      known.alike += more.alike;
      return;
    }
  all.push_back(more);
}

Exact unused(const std::vector<InWhole> &all, std::int64_t printed) {
  Exact sum;
  for (const InWhole &whole : all)
    sum += whole.unused(printed);
  return sum;
}

Amount sum(const std::vector<Charge> &charges) {
  Amount total;
  for (const Charge &charge : charges)
    total = total + charge.amount * charge.rate;
  return total;
}

// The first run grows with a longer edition, so it has all but what the others are.
Amount for_run(const Edition &edition, const RunSet &only, Amount each) {
  if (!only)
    return each;
  const CopiesCounted copies = copies_of(edition, only);
  if (!only.holds(0))
    return {0, 0, each.once + (each.printed + each.good) * Exact(copies.good),
            each.printed * Exact(copies.spare)};
  const Exact others(edition.run->copies - copies.good);
  const Exact spares(edition.run->spare - copies.spare);
  each.once -= (each.printed + each.good) * others;
  each.of_spares -= each.printed * spares;
  return each;
}

std::int64_t in_first_run(const Edition &edition, std::int64_t copies) {
  if (edition.runs.empty())
    return copies;
  const std::int64_t others = edition.run->copies - edition.runs.front().run.copies;
  return std::max<std::int64_t>(copies - others, 0);
}

std::int64_t fewest_copies(const Edition &edition) {
  return edition.runs.empty() ? 1 : edition.run->copies - edition.runs.front().run.copies + 1;
}

std::string alone_in(const Edition &edition, const RunSet &only) {
  return only ? fmt::format(", {} alone", names_of(edition, only)) : std::string{};
}

namespace {

const Exchange *exchange_of(const Edition &edition, Currency written) {
  const auto found = std::ranges::find_if(edition.exchanges, [&](const Exchange &exchange) {
    return exchange.foreign.currency == written;
  });
  return found == edition.exchanges.end() ? nullptr : &*found;
}

} // namespace

bool counts(const Edition &edition, Currency written) {
  return same_money(*edition.currency, written) || exchange_of(edition, written) != nullptr;
}

Exact in_own_money(const Edition &edition, const Price &price) {
  Exact amount(price.amount);
  const Exchange *exchange = same_money(*edition.currency, price.currency)
                                 ? nullptr
                                 : exchange_of(edition, price.currency);
  if (!exchange)
    return amount;
  return amount * Exact(exchange->own.amount) / Exact(exchange->foreign.amount);
}

Exact price_of_one(const Edition &edition, const Rate &rate) {
  const bool of_many = rate.per == Per::sheets || rate.per == Per::sides;
  return in_own_money(edition, rate.price) /
         Exact(of_many ? std::max<std::int64_t>(rate.count, 1) : 1);
}

std::string_view name_of(Group group) {
  switch (group) {
  case Group::printing:
    return "printing";
  case Group::tax:
    return "tax";
  case Group::paper:
    return "paper";
  case Group::hand:
    return "hand";
  case Group::finish:
    return "finish";
  case Group::other:
    break;
  }
  return "other";
}

} // namespace bodkin
