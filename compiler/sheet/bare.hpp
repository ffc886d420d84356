// What a machine leaves unprinted along the four edges of a sheet as it lies, alike on both sides.
#pragma once

#include "edition/machine.hpp"

namespace bodkin {

// A wider lead strip counts at both short edges: nothing tells which of the two goes in first, and
// turning the sheet over may change it.
Edges bare_edges(const Machine &machine, const Size &sheet);

} // namespace bodkin
