// What machines charge for the sides of a run: price steps, prices of a size, blank sides and tax.
#pragma once

#include "money/side_counts.hpp"
#include "money/way.hpp"

#include <vector>

namespace bodkin {

// The charges of a run of `printed_copies` (copies and spares), by machine as first met, the
// dearest mode first, each machine's tax after them. They hold up to `holds_to` printed copies,
// where the next price step begins to count.
struct Printing {
  std::vector<Charge> charges, taxes;
  std::vector<Unpriced> unpriced;
  std::vector<RoundedUp> rounded; // what the charges hold of it for this run
  std::int64_t holds_to = 0;
};

Printing printing(const Edition &edition, const SideCounts &counts, std::int64_t printed_copies);

} // namespace bodkin
