// The least that a side or a sheet can cost in any order of an edition's pages.
#pragma once

#include "edition/edition.hpp"
#include "money/exact.hpp"

#include <cstdint>
#include <vector>

namespace bodkin::arranging {

// Sides of one mode on one machine in the whole run, of all orders of pages.
struct SideRange {
  std::int64_t fewest = 0, most = 0;
};

// A price step that a run may be on: from so many sides, before so many (0: without end).
struct RunStep {
  std::int64_t from = 1, before = 0;
  Exact side; // tax in
};

// In order, for prices of any size; none where the shortest run has no price.
std::vector<RunStep> run_steps(const Edition &edition, const Machine &machine, Mode mode,
                               const SideRange &run);

// Tax in; the cheapest of the price steps that so many sides may reach. Nothing where none is
// priced, since the estimate leaves it out too.
Exact least_for_side(const Edition &edition, const Machine &machine, const Size &sheet, Mode mode,
                     const SideRange &run);
// What is paid before a side is printed, for one pass; nothing where nothing is asked. Tax in.
Exact setup_at_least(const Edition &edition, const Machine &machine);
// What a run costs at the machine where its sides and setup come to less. Tax in.
Exact least_of_run(const Edition &edition, const Machine &machine);
Exact price_of_sheet(const Edition &edition, const Stock &stock);

} // namespace bodkin::arranging
