// The lines below `edition`.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// What needs no names: title, size, run, margins, grid, money.
void take_own_facts(Reader &reader);
// What names stocks and machines; after these.
void take_own_supplies(Reader &reader);

} // namespace bodkin
