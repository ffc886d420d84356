// The money words under `edition`: budget, price, wages, rates of exchange, how copies are sold and
// given away, and what was really paid.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_money(Reader &reader);
// When the edition's own money is known: the foreign side of each rate stands first.
void settle_exchanges(Reader &reader);

// A later printing for which nothing is kept of what the first one paid once.
void note_nothing_kept(Reader &reader);

} // namespace bodkin
