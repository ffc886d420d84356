#include "measure/decimal.hpp"

#include <algorithm>

namespace bodkin {

std::string written(const Decimal &decimal, int least_places) {
  const bool negative = decimal.digits < 0;
  std::string digits = std::to_string(negative ? -decimal.digits : decimal.digits);
  const auto places = static_cast<std::size_t>(std::max(decimal.places, 0));
  if (digits.size() <= places)
    digits.insert(0, places + 1 - digits.size(), '0');
  std::string fraction = digits.substr(digits.size() - places);
  digits.resize(digits.size() - places);
  while (fraction.size() > static_cast<std::size_t>(least_places) && !fraction.empty() &&
         fraction.back() == '0')
    fraction.pop_back();
  if (fraction.size() < static_cast<std::size_t>(least_places))
    fraction.append(static_cast<std::size_t>(least_places) - fraction.size(), '0');
  return (negative ? "-" : "") + digits + (fraction.empty() ? "" : "." + fraction);
}

} // namespace bodkin
