// How a dummy is read, in words, with the lines to type.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

namespace bodkin::press {

Prose dummy_reading(const Edition &edition, const Imposition &imposition);

} // namespace bodkin::press
