#include "type/words.hpp"

#include <algorithm>
#include <hb.h>

namespace bodkin {
namespace {

constexpr std::string_view white = " \n\t";

bool is_letter_or_digit(char32_t c) {
  if (c < 0x80)
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
  switch (hb_unicode_general_category(hb_unicode_funcs_get_default(), c)) {
  case HB_UNICODE_GENERAL_CATEGORY_UPPERCASE_LETTER:
  case HB_UNICODE_GENERAL_CATEGORY_LOWERCASE_LETTER:
  case HB_UNICODE_GENERAL_CATEGORY_TITLECASE_LETTER:
  case HB_UNICODE_GENERAL_CATEGORY_MODIFIER_LETTER:
  case HB_UNICODE_GENERAL_CATEGORY_OTHER_LETTER:
  case HB_UNICODE_GENERAL_CATEGORY_DECIMAL_NUMBER:
  case HB_UNICODE_GENERAL_CATEGORY_LETTER_NUMBER:
  case HB_UNICODE_GENERAL_CATEGORY_OTHER_NUMBER:
    return true;
  default:
    return false;
  }
}

std::string_view without_white_end(std::string_view text) {
  const std::size_t last = text.find_last_not_of(white);
  return last == std::string_view::npos ? std::string_view{} : text.substr(0, last + 1);
}

// Where the word that ends at `end` begins.
std::size_t word_start(std::string_view text, std::size_t end) {
  const std::size_t before = end == 0 ? std::string_view::npos : text.find_last_of(white, end - 1);
  return before == std::string_view::npos ? 0 : before + 1;
}

} // namespace

CodePoint code_point_at(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) -> char32_t {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0;
  };
  const char32_t first = byte(at);
  if (first < 0x80)
    return {first, 1};
  if (first < 0xe0)
    return {(first & 0x1f) << 6 | (byte(at + 1) & 0x3f), 2};
  if (first < 0xf0)
    return {(first & 0x0f) << 12 | (byte(at + 1) & 0x3f) << 6 | (byte(at + 2) & 0x3f), 3};
  return {(first & 0x07) << 18 | (byte(at + 1) & 0x3f) << 12 | (byte(at + 2) & 0x3f) << 6 |
              (byte(at + 3) & 0x3f),
          4};
}

std::int64_t words_in(std::string_view text) {
  std::int64_t words = 0;
  bool counted = false;
  for (std::size_t i = 0; i < text.size();) {
    const CodePoint c = code_point_at(text, i);
    i += c.bytes;
    if (c.value < 0x80 && white.find(static_cast<char>(c.value)) != std::string_view::npos) {
      counted = false;
    } else if (!counted && is_letter_or_digit(c.value)) {
      counted = true;
      ++words;
    }
  }
  return words;
}

std::string last_words_of(std::string_view text, std::size_t count) {
  const std::string_view set = without_white_end(text);
  std::size_t start = set.size();
  for (std::size_t i = 0; i < count && start > 0; ++i) {
    start = without_white_end(set.substr(0, start)).size();
    start = word_start(set, start);
  }
  std::string words = set.empty() ? "" : "…" + std::string(set.substr(start));
  std::replace(words.begin(), words.end(), '\n', ' ');
  return words;
}

std::string words_around(std::string_view text, std::size_t at) {
  std::size_t begin = word_start(text, at);
  if (begin > 1)
    begin = word_start(text, begin - 1);
  std::size_t end = text.find_first_of(white, at);
  if (end != std::string_view::npos)
    end = text.find_first_of(white, end + 1);
  // A word may be a megabyte without a space.
  constexpr std::size_t most = 60;
  end = std::min(end, text.size());
  if (end - begin > most) {
    begin = at;
    end = at + code_point_at(text, at).bytes;
  }
  std::string words(text.substr(begin, end - begin));
  std::replace(words.begin(), words.end(), '\n', ' ');
  return words;
}

} // namespace bodkin
