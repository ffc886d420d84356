// How many of the book or of a piece to lay on one sheet, by what the run then costs: a dear side
// is shared by all that are cut out of it.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <vector>

namespace bodkin {

// Chooses the number for the book and for pieces that say `up most`, by what their pages ask to
// have printed, since pages are set only when their sheets are known.
void choose_ups(Edition &edition, const Sources &sources);

// The book and pieces that would cost less with another number on a sheet, or on the sheets that
// the same paper comes in under another name, and the numbers that were chosen, at what the whole
// run then costs. Nothing of a piece whose size is missing. `draws` is by page, numbered on through
// book and pieces from 1. Problems: cheaper-up and up-chosen, notes.
void check_ups(const Edition &edition, const std::vector<bool> &draws, const Sources &sources,
               Problems &problems);

} // namespace bodkin
