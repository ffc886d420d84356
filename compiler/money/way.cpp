#include "money/way.hpp"

namespace bodkin {

Exact RoundedUp::unused(std::int64_t printed) const {
  const Exact needed = each * Exact(printed) + once;
  return (Exact(needed.ceiling()) - needed) * rate;
}

Exact RoundedUp::most_unused() const { return rate; }

Exact Stretch::at(std::int64_t copies) const {
  Exact cost = at_none + each * Exact(copies);
  for (const RoundedUp &sheets : rounded)
    cost += sheets.unused(copies + spare);
  return cost;
}

Exact Stretch::most_unused() const {
  Exact most;
  for (const RoundedUp &sheets : rounded)
    most += sheets.most_unused();
  return most;
}

} // namespace bodkin
