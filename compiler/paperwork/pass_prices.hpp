// What one pass costs at the prices that the whole run reaches.
#pragma once

#include "money/exact.hpp"
#include "paperwork/making.hpp"

#include <string_view>

namespace bodkin::paperwork {

// Sides of one ink and price; a machine with two prices on one pass has two.
struct PassPrice {
  Mode mode = Mode::black;
  std::int64_t sides = 0; // of the run
  Exact rate;             // a side
  Exact total;
};

// Empty where some side has no price.
std::vector<PassPrice> prices_of(const Making &making, const Pass &pass);
// Whether a line of the estimate is what that machine is paid: sides, setup, least, tax.
bool is_paid_at(const EstimateLine &line, std::string_view machine);

} // namespace bodkin::paperwork
