// Sheets printed on both sides by a machine that takes paper once.
#pragma once

#include "sheet/passes.hpp"

namespace bodkin {

// One problem for each such machine.
void check_one_sided(const Edition &edition, const Imposition &imposition,
                     std::span<const SheetModes> modes, const Sources &sources, Problems &problems);

} // namespace bodkin
