// A folding out of its lines.
#pragma once

#include "edition/folding.hpp"
#include "edition/reader.hpp"

namespace bodkin {

Folding folding_of(Reader &reader, FactLine thing);

} // namespace bodkin
