// A number as written, exact: digits × 10^-places. Money literals, shares and type sizes are these;
// sums and quotients of money are made in the room money/, in rationals.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace bodkin {

struct Decimal {
  std::int64_t digits = 0;
  int places = 0;

  constexpr double value() const {
    double scaled = static_cast<double>(digits);
    for (int i = 0; i < places; ++i)
      scaled /= 10;
    return scaled;
  }
  bool operator==(const Decimal &) const = default;
};

// At least `least_places` decimals, none dropped.
std::string written(const Decimal &decimal, int least_places = 0);

} // namespace bodkin
