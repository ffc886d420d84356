// The ticket for the counter: a line for each pass with all that the person at the machine must
// know, what it will come to, and what to look at before the whole run is printed.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/making.hpp"

namespace bodkin::paperwork {

Leaflet job_ticket(const Making &making);

} // namespace bodkin::paperwork
