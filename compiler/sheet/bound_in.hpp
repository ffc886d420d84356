// Wraps and what goes at the centre lie in one pile with the book's sheets: how far the fold pushes
// them out, and what the knife makes of them.
#pragma once

#include "problems/problem.hpp"
#include "sheet/parts.hpp"

#include <optional>

namespace bodkin {

// The inner of two wraps is pushed out by the outer, what goes at the centre by all.
void lie_in_the_pile(const CopyPart &book, CopyPart &part);

// The fold that the staples go through: the spine, else the one that is folded last. None where no
// fold runs up the sheet.
std::optional<Length> bound_at(const Sheet &sheet);

// Problem: knife-through-fold, where a fold of what is bound in at the centre lies past the cut.
void check_knife(const CopyPart &book, const CopyPart &part, Problems &problems);

} // namespace bodkin
