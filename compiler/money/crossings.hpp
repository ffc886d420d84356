// From how many copies on another way is the cheapest.
#pragma once

#include "money/estimate.hpp"
#include "money/way.hpp"

#include <vector>

namespace bodkin {

// The cheapest of all ways that offer the run, for 1 to `longest_compared` copies. At one copy the
// first of equals leads; later a tie keeps the way that led before. Exact, and worked out from the
// straight lines: the number of steps is what it costs, not the number of copies.
struct Comparison {
  std::string at_one_copy; // the way that leads there
  std::vector<Crossing> crossings;
};
Comparison compare(const std::vector<Way> &ways);

} // namespace bodkin
