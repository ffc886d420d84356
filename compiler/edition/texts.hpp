// Texts that run from box to box.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_texts(Reader &reader); // after count_pages: prose may point to pages

} // namespace bodkin
