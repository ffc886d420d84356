// Problems of money: a budget that a copy or the run is over, with what would bring it under;
// prices that are not written; two currencies; a larger run that costs less.
#pragma once

#include "money/colour_savings.hpp"
#include "money/estimate.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

namespace bodkin {

// no-price, two-currencies and cheap-run: everything but the budget.
Problems price_problems(const Edition &edition, const Imposition &imposition,
                        const ChargedSides &sides, const Estimate &estimate,
                        const Sources &sources);

// A price in another money than the edition counts in, with no rate of exchange for it.
Problem two_currencies(const Edition &edition, const Price &price, Range from,
                       const Sources &sources);

// The over-budget problem, or nothing where the budget is met. Each way out that it names was
// applied to a copy of the edition, laid on its sheets and estimated anew: the figures are those of
// that edition. `anyway` makes the problem a warning.
Problems over_budget(const Edition &edition, const Imposition &imposition,
                     const ChargedSides &sides, const Estimate &estimate, const PagesDrawn &drawn,
                     const Sources &sources, bool anyway);

} // namespace bodkin
