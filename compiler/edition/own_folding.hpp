// The folding that an edition asks for: its own, a borrowed one, or the shelf's.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_folding(Reader &reader);

} // namespace bodkin
