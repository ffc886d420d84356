// A way to have an edition made, by oneself or by a printer, as a cost that changes with the number
// of copies. Between two price steps the cost is a straight line; a way is asked for the line that
// holds at a number of copies, so nothing is ever worked out copy by copy.
#pragma once

#include "money/exact.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

// Sheets of which several are cut out are used whole: a run takes the next whole number of them,
// and pays for the part that it does not need.
struct RoundedUp {
  Exact each, once, rate; // sheets or sides a printed copy, and beside; the price of a whole one
  Exact unused(std::int64_t printed) const;
  Exact most_unused() const; // no run pays as much for what it does not need
};

// at_none + each × copies, up to and with `last` copies, and what is rounded up to whole sheets.
struct Stretch {
  Exact at_none, each;
  std::int64_t last = 0;
  bool offered = true; // false: no such run is offered
  std::int64_t spare = 0;
  std::vector<RoundedUp> rounded{};
  Exact at(std::int64_t copies) const;
  Exact most_unused() const;
};

struct Way {
  std::string name;
  std::function<Stretch(std::int64_t copies)> at; // copies from 1
};

// The longest run that ways are compared for.
inline constexpr std::int64_t longest_compared = 100'000;

// A longer run that costs no more in all.
struct CheaperRun {
  std::int64_t copies = 0;
  Exact total;
};
std::optional<CheaperRun> cheaper_run(const Way &way, std::int64_t copies);

} // namespace bodkin
