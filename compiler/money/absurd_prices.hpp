// Prices that nobody can mean, judged by one another: a point left out, a pack taken for a sheet,
// two lines changed about.
#pragma once

#include "edition/edition.hpp"
#include "money/charged.hpp"
#include "problems/problem.hpp"

namespace bodkin {

void judge_prices(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  Problems &problems);

} // namespace bodkin
