// The estimate as a spreadsheet (OpenDocument 1.2, ISO/IEC 26300) in which every total is a formula
// of the figures it is made from, and holds no value of its own: what a spreadsheet program shows,
// it has added up itself. Whoever changes the copies there sees what the estimate would say; what
// no formula follows is said in its last rows.
#pragma once

#include "money/estimate.hpp"

#include <string>

namespace bodkin {

std::string estimate_as_spreadsheet(const Edition &edition, const Imposition &imposition,
                                    const ChargedSides &sides, const Estimate &estimate);

} // namespace bodkin
