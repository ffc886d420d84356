// The elements below a page, a spread, or a piece of standing or running matter.
#pragma once

#include "edition/reader.hpp"

#include <vector>

namespace bodkin {

enum class Stands { on_page, on_spread, in_standing, on_running };

// In order of lines, added to Edition::elements.
std::vector<ElementId> take_elements(Reader &reader, FactLine parent, Stands stands);

Problem too_many_things(Range range, std::size_t most);

} // namespace bodkin
