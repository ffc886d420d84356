// The assembly guide: from printed piles to finished copies, with a picture of every sheet and a
// measure for every place, so that a stranger makes the copy from it alone.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/making.hpp"

namespace bodkin::paperwork {

Leaflet assembly_guide(const Making &making);

} // namespace bodkin::paperwork
