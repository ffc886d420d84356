#include "money/charge.hpp"

#include <algorithm>

namespace bodkin {

Amount sum(const std::vector<Charge> &charges) {
  Amount total;
  for (const Charge &charge : charges) {
    total.printed += charge.amount.printed * charge.rate;
    total.good += charge.amount.good * charge.rate;
    total.once += charge.amount.once * charge.rate;
  }
  return total;
}

Exact price_of_one(const Rate &rate) {
  const bool of_many = rate.per == Per::sheets || rate.per == Per::sides;
  return Exact(rate.price.amount) / Exact(of_many ? std::max<std::int64_t>(rate.count, 1) : 1);
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
