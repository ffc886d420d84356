// What the next sheet costs, said where the pages do not fold: the sheet room finds that before
// anything has a price.
#pragma once

#include "money/estimate.hpp"
#include "problems/problem.hpp"

#include <vector>

namespace bodkin {

// Ends the `why` of does-not-fold with ", for $0.28 a copy more": the edition as it is laid, with a
// sheet that it does not fill, against the same without the pages that ask for that sheet. `draws`
// is by page, index 1..page_count.
void price_more_sheets(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, const std::vector<bool> &draws,
                       const Sources &sources, Problems &problems);

} // namespace bodkin
