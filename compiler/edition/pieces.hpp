// Inserts and the wrap, each read as an edition in little.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_pieces(Reader &reader); // when all else of the edition is read

} // namespace bodkin
