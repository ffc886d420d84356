// Where an element is to stand: its own lines, then those of `every`, then the default.
#pragma once

#include "edition/elements.hpp"
#include "edition/every.hpp"

namespace bodkin {

Along along_of(const language::Along &along);
Placement placement_of(Reader &reader, FactLine element, const ElementFacts &facts, Stands stands);

} // namespace bodkin
