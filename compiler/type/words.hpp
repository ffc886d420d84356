// Words as people count them: runs between white space that hold a letter or a digit.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace bodkin {

// The code point at `at` and its length in bytes. The text is well formed UTF-8: every manuscript
// and text is checked when it is read.
struct CodePoint {
  char32_t value = 0;
  std::uint32_t bytes = 1;
};
CodePoint code_point_at(std::string_view text, std::size_t at);

std::int64_t words_in(std::string_view text);

// The last `count` words with "…" before them: "…and the ribs went back".
std::string last_words_of(std::string_view text, std::size_t count);

// The word that holds the byte, with one neighbour at each side.
std::string words_around(std::string_view text, std::size_t at);

} // namespace bodkin
