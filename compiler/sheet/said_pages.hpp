// `front` and `back` of a folding: the maker's own numbering of what is unfolded.
#pragma once

#include "sheet/fold.hpp"

namespace bodkin {

// Puts the pages in the order told; false, with a problem, where that cannot be.
bool number_as_said(const Folding &folding, FoldedSheet &sheet, Problems &problems);

} // namespace bodkin
