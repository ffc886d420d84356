// Problems of selling: more copies spoken for than are made, a way that loses money, no price.
#pragma once

#include "money/estimate.hpp"
#include "problems/problem.hpp"

namespace bodkin {

void judge_sales(Problems &problems, const Edition &edition, const Estimate &estimate);

} // namespace bodkin
