// From how many copies on another way is the cheapest.
#pragma once

#include "money/estimate.hpp"
#include "money/way.hpp"

#include <vector>

namespace bodkin {

// The cheapest of all ways that offer the run, for `from` to `longest_compared` copies: no edition
// is smaller than those of its runs that stay what they are, and one copy. There the first of
// equals leads; later a tie keeps the way that led before. Exact, and worked out from the straight
// lines: the number of steps is what it costs, not the number of copies.
struct Comparison {
  std::string at_one_copy; // the way that leads at the fewest copies
  std::vector<Crossing> crossings;
};
Comparison compare(const std::vector<Way> &ways, std::int64_t from = 1);

} // namespace bodkin
