// Which sheets of the book the copies of some runs have for themselves.
#pragma once

#include "sheet/parts.hpp"

namespace bodkin {

// A sheet is made once for all runs that have it alike, laid as the first of them has it. How far a
// thicker cover pushes them out is then its cover's: the difference is less than any knife holds.
void find_own_sheets(std::vector<CopyPart> &parts);

} // namespace bodkin
