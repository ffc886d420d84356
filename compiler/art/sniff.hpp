// What kind of file some bytes are, by their first few hundred.
#pragma once

#include "art/inspect.hpp"

#include <string_view>

namespace bodkin::art {

// A refusal names what else it is, where that is known, and what to do.
Outcome<Format> sniff(std::string_view bytes);

} // namespace bodkin::art
