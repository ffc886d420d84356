// Looks through the shelf for a name that nothing in the edition bears.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// Shelf files, as `borrow` names them, that hold a thing of this name.
std::vector<std::string> shelves_holding(Reader &reader, Family family, std::string_view name);

} // namespace bodkin
