// The least that a side or a sheet can cost in any order of an edition's pages.
#pragma once

#include "edition/edition.hpp"
#include "money/exact.hpp"

#include <cstdint>

namespace bodkin::arranging {

// Sides of one mode on one machine in the whole run, of all orders of pages.
struct SideRange {
  std::int64_t fewest = 0, most = 0;
};

// Tax in; the cheapest of the price steps that so many sides may reach. Nothing where none is
// priced, since the estimate leaves it out too.
Exact least_for_side(const Edition &edition, const Machine &machine, const Size &sheet, Mode mode,
                     const SideRange &run);
Exact price_of_sheet(const Edition &edition, const Stock &stock);

} // namespace bodkin::arranging
