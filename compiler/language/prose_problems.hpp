// What goes wrong in running text, each in words.
#pragma once

#include "problems/problem.hpp"

#include <string>
#include <string_view>

namespace bodkin::language {

Problem image_in_prose(Range range, std::string_view path, std::string_view description);
Problem html_in_prose(Range range, std::string_view tag);
Problem verse_set_in(Range range, std::string_view first_line);
Problem prose_too_deep(Range range);
Problem prose_too_tangled(Range range);
Problem prose_bytes(Range range, std::size_t byte, std::size_t lines);

} // namespace bodkin::language
