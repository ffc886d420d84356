// The codes of ISO 4217, and the decimals that money in each is written with.
#pragma once

#include "measure/price.hpp"

#include <span>
#include <string_view>

namespace bodkin {

std::span<const std::string_view> currency_codes(); // rising
bool is_currency_code(std::string_view code);
// Decimals of the smaller unit: 2 of most money, none of yen, 3 of dinars.
int minor_digits(Currency currency);

} // namespace bodkin
