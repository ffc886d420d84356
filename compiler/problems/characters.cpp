#include "problems/characters.hpp"

#include <unicode/uchar.h>

namespace bodkin {
namespace {

constexpr char32_t replacement = 0xFFFD;

struct Lead {
  std::size_t bytes;
  char32_t bits;
  char32_t smallest; // a longer form than needed is malformed (Unicode, table 3-7)
};

Lead lead_of(unsigned char byte) {
  if (byte < 0x80)
    return {1, byte, 0};
  if (byte >= 0xC2 && byte < 0xE0)
    return {2, byte & 0x1Fu, 0x80};
  if (byte >= 0xE0 && byte < 0xF0)
    return {3, byte & 0x0Fu, 0x800};
  if (byte >= 0xF0 && byte < 0xF5)
    return {4, byte & 0x07u, 0x10000};
  return {0, 0, 0};
}

bool follows(char byte) { return (static_cast<unsigned char>(byte) & 0xC0u) == 0x80; }

bool turns_direction(char32_t code) {
  return code == 0x061C || code == 0x200E || code == 0x200F || (code >= 0x202A && code <= 0x202E) ||
         (code >= 0x2066 && code <= 0x2069);
}

} // namespace

Character character_at(std::string_view text, std::size_t at) {
  const Lead lead = lead_of(static_cast<unsigned char>(text[at]));
  if (lead.bytes == 1)
    return {lead.bits, 1, true};
  const Character malformed{replacement, 1, false};
  if (lead.bytes == 0 || lead.bytes > text.size() - at)
    return malformed;
  char32_t code = lead.bits;
  for (std::size_t i = 1; i < lead.bytes; ++i) {
    if (!follows(text[at + i]))
      return malformed;
    code = (code << 6) | (static_cast<unsigned char>(text[at + i]) & 0x3Fu);
  }
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (code < lead.smallest || code > 0x10FFFF || surrogate)
    return malformed;
  return {code, lead.bytes, true};
}

std::size_t character_start(std::string_view text, std::size_t at) {
  if (at >= text.size())
    return text.size();
  for (std::size_t back = 1; back < 4 && back <= at && follows(text[at - back + 1]); ++back)
    if (character_at(text, at - back).bytes > back)
      return at - back;
  return at;
}

void append_utf8(std::string &text, char32_t code) {
  const auto add = [&text](char32_t byte) { text += static_cast<char>(byte); };
  if (code < 0x80)
    return add(code);
  if (code < 0x800) {
    add(0xC0 | (code >> 6));
  } else if (code < 0x10000) {
    add(0xE0 | (code >> 12));
    add(0x80 | ((code >> 6) & 0x3F));
  } else {
    add(0xF0 | (code >> 18));
    add(0x80 | ((code >> 12) & 0x3F));
    add(0x80 | ((code >> 6) & 0x3F));
  }
  add(0x80 | (code & 0x3F));
}

int columns_of(char32_t code) {
  if (code < 0x7F)
    return 1;
  const auto character = static_cast<UChar32>(code);
  constexpr char32_t soft_hyphen = 0xAD;
  const auto category = U_GET_GC_MASK(character);
  if ((category & (U_GC_MN_MASK | U_GC_ME_MASK | U_GC_CF_MASK)) != 0 && code != soft_hyphen)
    return 0;
  switch (u_getIntPropertyValue(character, UCHAR_EAST_ASIAN_WIDTH)) {
  case U_EA_WIDE:
  case U_EA_FULLWIDTH:
    return 2;
  default:
    return 1;
  }
}

int columns_of(std::string_view text) {
  int columns = 0;
  for (std::size_t at = 0; at < text.size();) {
    const Character character = character_at(text, at);
    columns += columns_of(character.code);
    at += character.bytes;
  }
  return columns;
}

char32_t harmless(char32_t code) {
  constexpr char32_t picture_of_null = 0x2400, picture_of_delete = 0x2421;
  if (code < 0x20)
    return picture_of_null + code;
  if (code == 0x7F)
    return picture_of_delete;
  const bool line_end = code == 0x2028 || code == 0x2029;
  if ((code >= 0x80 && code < 0xA0) || line_end || turns_direction(code))
    return replacement;
  return code;
}

std::string harmless(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const Character character = character_at(text, at);
    append_utf8(out, harmless(character.code));
    at += character.bytes;
  }
  return out;
}

std::string as_xml(std::string_view text) {
  std::string out;
  for (const char c : text)
    switch (c) {
    case '&':
      out += "&amp;";
      break;
    case '<':
      out += "&lt;";
      break;
    case '>':
      out += "&gt;";
      break;
    case '"':
      out += "&quot;";
      break;
    default:
      out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
  return out;
}

} // namespace bodkin
