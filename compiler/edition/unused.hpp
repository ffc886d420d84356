// Things of the edition's own file that no line asks for.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// Stocks are left to the checks on sheets: a stock may be named and yet be on no sheet.
void note_unused(Reader &reader);

} // namespace bodkin
