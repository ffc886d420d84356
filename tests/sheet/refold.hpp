// Folds an imposition back into its book, on paper: every place is a rectangle of the sheet with a
// page on its front and a page on its back; each fold turns all that lies beyond its line over, as
// geometry, and what lies on what is kept as heights. No panel is counted and nothing of the
// compiler's own folding is used. Says what is wrong, or nothing.
//
// Ends pushed together are not folded line by line here: see hangs_together() for those.
#pragma once

#include "edition/folding.hpp"
#include "sheet/imposition.hpp"

#include <string>

namespace bodkin::test {

std::string refold(const Imposition &imposition, const Folding &folding);

} // namespace bodkin::test
