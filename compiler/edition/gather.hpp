// The edition's line, its names and its `every`, gathered from the manuscripts taken in.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// Fills Reader::edition_line, names and every. Of two things of one name the own one counts, then
// that of the file borrowed last; what a borrowed file may not hold is a problem.
void gather(Reader &reader);

} // namespace bodkin
