// Marks where leaves are bound: places of sewing holes, which the needle takes away, and collating
// steps, which a wrap covers.
#pragma once

#include "sheet/marks.hpp"

namespace bodkin {

// Through the side: beside the spine of the first page, which lies on top when the pile is pierced.
// Through the fold: on the fold between a section's two middle pages, where the needle goes in.
void mark_holes(Marks &marks, const Edition &edition, const Imposition &imposition, int sheet,
                SideName side, const Box &printed);

// On the fold between a section's first and last page, as wide as the section is thick, a step
// further down for each: a section that is left out, doubled or upside down breaks the stair. Only
// where a wrap covers the spine.
void mark_collating(Marks &marks, const Edition &edition, const Imposition &imposition, int sheet,
                    SideName side, const Box &printed);

} // namespace bodkin
