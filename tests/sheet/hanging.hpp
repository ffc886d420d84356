// Judges a finished book of double leaves, printed on one side of one sheet, by what it must be and
// not by how it was folded: lay the panels in page order, spine at the left; then paper that hangs
// together on the sheet must lie edge on edge, folds in one edge must not interlock, every opening
// must be free to open but at the spine. Says what is wrong, or nothing.
#pragma once

#include "edition/folding.hpp"
#include "sheet/imposition.hpp"

#include <string>

namespace bodkin::test {

std::string hangs_together(const Imposition &imposition, const Folding &folding);

} // namespace bodkin::test
