// What keeps pages where they are, or together, in words.
#pragma once

#include "money/arranging_wishes.hpp"
#include "problems/sources.hpp"

#include <string>
#include <vector>

namespace bodkin::arranging {

// "pages 6 and 7: a spread (line 43)", a line each; those that say `stays` together, last.
std::vector<std::string> told(const Edition &edition, const std::vector<Wish> &wishes,
                              const Sources &sources);

} // namespace bodkin::arranging
