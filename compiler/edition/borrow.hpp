// The manuscripts of an edition: its own file and all that it borrows, directly or through others.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// Reads them all, each once, and fills Reader::manuscripts and strongest_first: the own file, then
// what it borrows from last to first, each with what it borrows in turn. False where the edition's
// own file cannot be read.
bool take_in_manuscripts(Reader &reader, std::string_view path);

} // namespace bodkin
