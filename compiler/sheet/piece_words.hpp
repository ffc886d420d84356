// A piece of a copy in words for whoever makes it: where it goes, how it is cut and folded, what is
// done to it.
#pragma once

#include "sheet/parts.hpp"

#include <string>

namespace bodkin {

// A few lines, each ending in a line end.
std::string piece_in_words(const std::vector<CopyPart> &parts, const CopyPart &part, Ruler ruler);

} // namespace bodkin
