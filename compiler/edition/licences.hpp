// Licences by the words that sources and editions write.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// The licence that part `licence` of a line names, by its title, its full name or its short one,
// whatever their capitals, blanks and hyphens; none with the problem reported.
std::optional<LicenceId> licence_named(Reader &reader, FactLine line);

} // namespace bodkin
