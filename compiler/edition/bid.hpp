// Another printer's offer for the whole run.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "measure/price.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

struct BidStep {
  std::int64_t from_copies = 1; // this price for each copy from this many on
  Rate rate;
  Range range;
};

struct Bid {
  std::string name, title;
  Range range;
  std::vector<Known<Mode>> prints;
  std::vector<BidStep> steps; // by from_copies
  std::optional<Known<Rate>> postage;
};

} // namespace bodkin
