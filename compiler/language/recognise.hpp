// The line grammar alone, for measuring what reading a manuscript costs beside it.
#pragma once

#include <cstddef>
#include <string_view>

namespace bodkin::language {

// Runs the grammar over every line without keeping anything; how many lines there were.
std::size_t recognise(std::string_view text);

} // namespace bodkin::language
