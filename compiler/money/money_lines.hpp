// Words about money for problems: signs of currencies, and lines with an amount to be filled in.
#pragma once

#include "measure/price.hpp"
#include "problems/sources.hpp"

#include <cstdint>
#include <string>

namespace bodkin {

std::string money_sign(Currency currency);       // "£", "CAD"
std::string money_to_fill_in(Currency currency); // "£…", "… CAD"

// The keyword of the line that a range stands in, or nothing.
std::string first_word(const Sources &sources, Range range);

// The line that a range stands in, with its amount in another currency.
std::string with_money_in(const Sources &sources, Range range, Currency currency);

// The line that a range stands in with another first number.
std::string line_with_first_number(const Sources &sources, Range range, std::int64_t number);

} // namespace bodkin
