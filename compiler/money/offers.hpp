// Problems of price lists: offers without a price or past their last day, steps that rise.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

namespace bodkin {

void judge_offers(Problems &problems, const Edition &edition, const Sources &sources);

} // namespace bodkin
