// A number as typed, taken apart exactly: `5 1/2in`, `-4deg`, `½`, `0.0058in`. What it becomes is
// asked for by kind. Nothing here rounds but a fraction of a unit that no length can hold.
#pragma once

#include "measure/decimal.hpp"
#include "measure/few.hpp"
#include "measure/length.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

namespace bodkin::language {

struct Amount {
  bool negative = false;
  std::int64_t digits = 0; // digits × 10^-places, and beside it numerator ÷ denominator
  int places = 0;
  std::int64_t numerator = 0, denominator = 1;
  bool fraction = false;
  bool too_big = false; // more digits, or more decimals, than a number here may have
  std::string_view unit;
  bool inch_mark = false;

  bool zero() const { return digits == 0 && numerator == 0; }
  bool bare() const { return unit.empty() && !inch_mark; }
  bool whole() const { return !fraction && places == 0; }
};

// `text` is a lexeme of kind number, span or money without its sign.
Amount read_amount(std::string_view text);

// Amount × `per` (a whole number of small units in one of its unit), rounded half away from zero;
// none where the result is past `most`.
std::optional<std::int64_t> scaled(const Amount &amount, std::int64_t per, std::int64_t most);
// Units of Length in `in`, `mm`, `cm`, `pt` or `pc`.
std::optional<std::int64_t> units_in(std::string_view unit);
// A fraction becomes a decimal where at most limits::number_places hold it.
std::optional<Decimal> decimal_of(const Amount &amount);

} // namespace bodkin::language
