// A leaflet as a PDF, in black.
#pragma once

#include "paperwork/leaflet.hpp"
#include "press/leaflet_type.hpp"
#include "press/output.hpp"

namespace bodkin::press {

// All that is set of it, to choose faces by.
std::vector<std::string> words_of(const paperwork::Leaflet &leaflet);

// Without pictures of pages or sheets. `type` must be usable.
void write_leaflet(const paperwork::Leaflet &leaflet, LeafletType &type, const Imprint &imprint,
                   std::string_view kind, const Sink &sink);
// With them, from plates that nothing in colour is written from afterwards.
void write_leaflet(const paperwork::Leaflet &leaflet, LeafletType &type, Plates &plates,
                   const Imprint &imprint, std::string_view kind, const Sink &sink);

} // namespace bodkin::press
