// What brings an edition under its budget, each change applied, laid on its sheets and priced.
#pragma once

#include "money/bill.hpp"
#include "money/saving.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

// Changes made one on top of the other, as they came out.
struct Tried {
  std::vector<Saving> made;
  bool anew = false; // and then the pages laid in the order that costs least
  Exact cost;        // of what the budget speaks of
  bool in = false;
};

// What each of the changes came to when it was added.
struct Step {
  std::string what;
  Exact cost;
  bool free = false; // nothing is lost by it
};

// A longer or shorter run that meets the budget, with these changes beside it.
struct OtherRun {
  std::vector<Saving> made;
  std::int64_t copies = 0;
  Exact total;
};

struct BudgetWays {
  std::vector<Tried> ways; // that meet it, the cheapest loss first
  std::vector<Step> steps; // of the first, or of the most that could be done
  std::optional<OtherRun> run;
};

// Changes that cost a maker nothing are made first, and the others beside them. Ways differ in more
// than one holding another.
BudgetWays ways_under_budget(const Edition &edition, const Laid &laid, const Estimate &estimate,
                             const PagesDrawn &drawn, const Sources &sources);

} // namespace bodkin
