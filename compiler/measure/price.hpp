// Money and rates as written. What they add up to is worked out in the room money/.
#pragma once

#include "measure/decimal.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace bodkin {

// An ISO 4217 code, or empty before the edition's currency is known.
struct Currency {
  std::array<char, 3> letters{};
  constexpr bool empty() const { return letters[0] == 0; }
  constexpr std::string_view code() const {
    return empty() ? std::string_view{} : std::string_view(letters.data(), 3);
  }
  bool operator==(const Currency &) const = default;
};
constexpr Currency currency_of(std::string_view code) {
  Currency currency;
  if (code.size() == 3)
    currency.letters = {code[0], code[1], code[2]};
  return currency;
}

struct Price {
  Decimal amount;
  Currency currency;
  bool operator==(const Price &) const = default;
};

enum class Per { side, sheet, copy, plate, pass, run, each, sheets, hour, once, sides };
struct Rate {
  Price price;
  Per per = Per::once;
  std::int64_t count = 1; // of `per 500 sheets`
  bool operator==(const Rate &) const = default;
};

// "$0.12", "£2.10", "12.50 CAD": at least two decimals, every written digit kept.
std::string written(const Price &price);
std::string written(const Decimal &amount, Currency currency);
std::string written(const Rate &rate); // "$18.50 per 500 sheets"

} // namespace bodkin
