#include "edition/like.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <algorithm>

namespace bodkin {
namespace {

void take_step(Reader &reader, FactLine line, Bid &bid) {
  const auto from = count_in(reader, line, "from", 1, "the smallest order is one copy");
  const auto price = rate_in(reader, line, "price");
  if (from && price)
    bid.steps.push_back({from->value, price->value, line.range()});
}

Bid bid_of(Reader &reader, const Named &named, const Facts &facts) {
  Bid bid;
  bid.name = named.name;
  bid.title = named.line.words("title");
  bid.range = named.line.range();
  facts.each("prints", [&](FactLine line) {
    if (const auto mode = mode_in(line, "mode"))
      bid.prints.push_back(*mode);
  });
  facts.each("copies", [&](FactLine line) { take_step(reader, line, bid); });
  std::stable_sort(bid.steps.begin(), bid.steps.end(), [](const BidStep &a, const BidStep &b) {
    return a.from_copies < b.from_copies;
  });
  bid.postage = rate_in(reader, facts.find("postage"), "postage");
  return bid;
}

} // namespace

void take_bids(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::bid);
  const Things &things = reader.things(Family::bid);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.bids.push_back(bid_of(reader, things.all[i], facts[i]));
}

} // namespace bodkin
