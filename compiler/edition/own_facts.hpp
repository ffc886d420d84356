// The lines below `edition`.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// What needs no names: title, size, run, margins, grid, money.
void take_own_facts(Reader &reader);
// What names stocks and machines; after these.
// Of an insert or a wrap; what it does not say is as the book has it.
void take_piece_facts(Reader &reader, const Edition &book);
void take_own_supplies(Reader &reader);

} // namespace bodkin
