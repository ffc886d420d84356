// Problems of selling: more copies spoken for than are made, a way that loses money, no price,
// an hour that is paid and never worked.
#pragma once

#include "money/estimate.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

namespace bodkin {

void judge_sales(Problems &problems, const Edition &edition, const Estimate &estimate,
                 const Sources &sources);

} // namespace bodkin
