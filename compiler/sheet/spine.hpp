// The spine of a gathered book, and the room that a wrap leaves for it.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

// How thick the back of a book is that is gathered leaf by leaf or section by section: the sum of
// its leaves' calipers (derived). Nothing where all sheets are nested in each other: they have a
// fold there and no back.
Length spine_of(const Edition &book, const Imposition &imposition);

// Moves the pages of a wrap, imposed with one fold in the middle, apart by a spine, with a fold on
// either side of it. Problem: wrap-too-narrow, where the paper has no room for that.
void open_for_spine(const Piece &wrap, Length spine, Imposition &imposition, Problems &problems);

} // namespace bodkin
