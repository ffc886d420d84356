// Paper too thick for its folding.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "sheet/fold.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

// Paper too thick to fold, or so thick that the inner pages leave the book; after creep is known.
void check_thickness(const Edition &edition, const FoldedSheet &folded,
                     const Imposition &imposition, Problems &problems);

} // namespace bodkin
