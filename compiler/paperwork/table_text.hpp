// A leaflet's table for a terminal.
#pragma once

#include "paperwork/leaflet.hpp"

#include <string>

namespace bodkin::paperwork {

// Every line ends with a line end. No word is broken: one that is longer than there is room for
// makes the table wider.
std::string table_as_text(const Table &table, int columns, int indent);

} // namespace bodkin::paperwork
