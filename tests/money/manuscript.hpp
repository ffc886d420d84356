// A manuscript in a test, read, laid on its sheets and priced.
#pragma once

#include "edition/reading.hpp"
#include "money/budget.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::tests {

struct Priced {
  Read read;
  std::vector<bool> draws; // pages with anything but hand matter
  Laid laid;
  Estimate estimate;

  const Edition &edition() const { return read.edition(); }
  const Sources &sources() const { return *read.sources; }
  // As a terminal shows them.
  std::string over_budget_text(bool anyway = false) const;
  std::string price_problems_text() const;
};

Priced priced(std::string_view manuscript, MoreFiles more = {});

} // namespace bodkin::tests
