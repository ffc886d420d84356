// The flaps of a pocket, and the strip of glue that a leaf is tipped in by.
#pragma once

#include "edition/piece.hpp"
#include "sheet/parts.hpp"

namespace bodkin {

// Of a pocket imposed as a flat page: paper beyond three of its edges, with folds at those edges.
void add_flaps(const Piece &pocket, Imposition &imposition);

// What of a tipped-in leaf's underside lies under glue is hidden.
void hide_glue(CopyPart &part);

} // namespace bodkin
