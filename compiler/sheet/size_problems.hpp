// Page counts that do not fold, and sheets that do not give the size of page asked for.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"
#include "sheet/layout.hpp"

namespace bodkin {

Problem does_not_fold(const Edition &edition, const FoldedSheet &folded, const Layout &layout,
                      const Sources &sources);

// One problem for each size of sheet that does not give the page, or that the folding does not
// take; whether there is one.
bool check_sizes(const Edition &edition, const FoldedSheet &folded, const Imposition &imposition,
                 Problems &problems);

} // namespace bodkin
