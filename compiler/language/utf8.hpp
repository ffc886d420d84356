// Where a text stops being UTF-8.
#pragma once

#include <cstddef>
#include <string_view>

namespace bodkin::language {

// The first byte that is NUL or begins no well-formed character (Unicode 15.0, table 3-7);
// std::string_view::npos where there is none.
std::size_t first_malformed(std::string_view text);
// As long as the text, with a question mark for each byte that is part of no character.
std::string well_formed(std::string_view text);

} // namespace bodkin::language
