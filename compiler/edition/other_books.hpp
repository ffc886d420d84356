// The book as each of several runs has it: on another paper, printed otherwise, with other matter
// on its pages.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// Where runs differ in what is printed, the edition becomes the book of its first run, and each
// other run has its own among the pieces.
void take_other_books(Reader &reader);

} // namespace bodkin
