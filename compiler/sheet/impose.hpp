// From an edition to its sheets: how many there are, which stock each is, where every page lands
// and how far creep pushes it. Linear in the number of pages.
//
// Problems found here: folding-cannot-be, does-not-fold, no-cover, mixed-stock, mixed-machine,
// wrong-size. Whatever is wrong, every page of the edition has a place, so that all can be drawn.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

// The `why` of does-not-fold ends where its money may follow (", for $0.28 a copy more").
Imposition impose(const Edition &edition, const Sources &sources, Problems &problems);

} // namespace bodkin
