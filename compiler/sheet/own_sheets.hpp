// Which sheets of the book the copies of one run have for themselves.
#pragma once

#include "sheet/parts.hpp"

namespace bodkin {

// A sheet that is another one in some run is made for each run by itself; all the others are made
// for all copies, laid as the first run has them. How far a thicker cover pushes them out is then
// its cover's: the difference is less than any knife holds.
void find_own_sheets(std::vector<CopyPart> &parts);

} // namespace bodkin
