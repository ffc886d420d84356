// Cards that tell the price as a PDF, in black: several on a sheet, to be cut apart.
#pragma once

#include "paperwork/price_cards.hpp"
#include "press/leaflet_type.hpp"
#include "press/output.hpp"

namespace bodkin::press {

// Title and price are in the face of the edition's largest style, the rest in the one that it is
// read in; where those lack a character, in those of the assembly guide. `type` has to be usable.
void write_price_cards(const paperwork::PriceCards &cards, const LeafletType &type,
                       const Imprint &imprint, const Sink &sink);

// What no face has a character for: warnings at `from`, the line that asks for cards.
Problems lacking_on_cards(const paperwork::PriceCards &cards, const LeafletType &type, Range from);

} // namespace bodkin::press
