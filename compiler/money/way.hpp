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

// at_none + each × copies, up to and with `last` copies.
struct Stretch {
  Exact at_none, each;
  std::int64_t last = 0;
  bool offered = true; // false: no such run is offered
  Exact at(std::int64_t copies) const { return at_none + each * Exact(copies); }
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
