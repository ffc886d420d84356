// Numbers and lists as problems and reports say them.
#pragma once

#include "edition/edition.hpp"
#include "problems/sources.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::spoken {

std::string listed(const std::vector<int> &numbers);       // "3, 4 and 17"; "3 and 22 to 32"
std::string pages_listed(const std::vector<int> &numbers); // "page 21"; "pages 21 and 22"
std::string sheets_listed(const std::vector<int> &numbers);
std::string ordinal(int number);                 // "sixth", "21st"
std::string times(std::size_t number);           // "once", "twice", "three times"
std::string with_article(std::string_view noun); // "a letter", "an a4"
std::string fact(std::string_view keyword, std::string_view phrase); // "pages      24"
std::string measures(const Size &size, Ruler ruler); // "5 1/2in x 8 1/2in", never by name
// "a5 (148mm x 210mm)", or the measures alone where the size has no name.
std::string named_and_measured(const Size &size, Ruler ruler);
std::string_view mode_name(Mode mode);
std::string on_line(const Sources &sources, Range range); // " (line 200)", or nothing

} // namespace bodkin::spoken
