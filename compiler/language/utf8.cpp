#include "language/utf8.hpp"

#include "problems/characters.hpp"

#include <cstdint>
#include <cstring>

namespace bodkin::language {
namespace {

// Eight bytes, none of them NUL or past ASCII. A byte of 0 makes its neighbour borrow at worst,
// and then the slow way looks again.
bool plain(const char *eight) {
  std::uint64_t word = 0;
  std::memcpy(&word, eight, 8);
  constexpr std::uint64_t ones = 0x0101010101010101U;
  constexpr std::uint64_t tops = 0x8080808080808080U;
  return ((word | (word - ones)) & tops) == 0;
}

} // namespace

std::size_t first_malformed(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    if (text.size() - at >= 8 && plain(text.data() + at)) {
      at += 8;
      continue;
    }
    const auto byte = static_cast<unsigned char>(text[at]);
    if (byte != 0 && byte < 0x80) {
      ++at;
      continue;
    }
    if (byte == 0)
      return at;
    const Character character = character_at(text, at);
    if (!character.well_formed)
      return at;
    at += character.bytes;
  }
  return std::string_view::npos;
}

std::string well_formed(std::string_view text) {
  std::string whole(text);
  for (std::size_t at = first_malformed(whole); at < whole.size();) {
    whole[at] = '?';
    const std::size_t next = first_malformed(std::string_view(whole).substr(at));
    at = next == std::string_view::npos ? next : at + next;
  }
  return whole;
}

} // namespace bodkin::language
