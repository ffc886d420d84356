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
  std::vector<bool> draws;    // pages with anything but hand matter
  std::vector<bool> coloured; // where not all that draw are
  Laid laid;
  Estimate estimate;

  const Edition &edition() const { return read.edition(); }
  const Sources &sources() const { return *read.sources; }
  // As a terminal shows them.
  std::string over_budget_text(bool anyway = false) const;
  std::string price_problems_text() const;
};

Priced priced(std::string_view manuscript, MoreFiles more = {});

// Fifty copies, dated 2026-11, of eight pages on two letter sheets, black at $0.10 a side with the
// paper in it: $0.40 a copy. `facts` are lines under `edition`, indented; `rest` follows the
// supplies (stocks plain, rose; machine copier; style label) on line 18, then come the pages.
std::string small_zine(std::string_view facts, std::string_view rest,
                       std::string_view pages = "page 1-8\n  words \"Rain\" in label\n");

} // namespace bodkin::tests
