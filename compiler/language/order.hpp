// Parts of a line in another order than their phrase has them: `page 6 on plain in colour`.
#pragma once

#include "language/changes.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::language {

// Lexemes [first, first_end) and [second, end) have changed places in `line`.
struct Reordered {
  std::string line;
  std::size_t first = 0, first_end = 0, second = 0, end = 0;
};

// All lines in which two neighbouring parts have changed places; a part begins with one of the
// phrase's own words, or stands between commas.
std::vector<Reordered> reorderings(const Trial &trial, const Entry &entry);

// The words that stand in a phrase as they are, in its order: `called`, `in`, `on` and `by`.
std::vector<std::string_view> own_words_of_phrase(const Entry &entry);

} // namespace bodkin::language
