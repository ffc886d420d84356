#include "type/typed_text.hpp"

#include "type/words.hpp"

namespace bodkin {
namespace {

constexpr std::size_t tab_stop = 4;
constexpr char32_t soft_hyphen = 0xad;

bool ends_a_line(char32_t c) {
  return c == '\n' || c == 0x0b || c == 0x0c || c == 0x85 || c == 0x2028 || c == 0x2029;
}

void append_space(std::string &text) {
  if (!text.empty() && text.back() != ' ' && text.back() != '\n')
    text += ' ';
}

void append_tab(std::string &text) {
  const std::size_t line = text.rfind('\n') + 1; // npos + 1 is the text's start
  text.append(tab_stop - (text.size() - line) % tab_stop, ' ');
}

void append_white(std::string &text, char32_t c, White white) {
  if (white == White::one_space)
    append_space(text);
  else if (ends_a_line(c))
    text += '\n';
  else if (c == '\t')
    append_tab(text);
  else
    text += ' ';
}

} // namespace

void append_typed(std::string &text, std::string_view typed, White white) {
  text.reserve(text.size() + typed.size());
  for (std::size_t at = 0; at < typed.size();) {
    const CodePoint c = code_point_at(typed, at);
    if (c.value == ' ' || c.value == '\t' || ends_a_line(c.value))
      append_white(text, c.value, white);
    else if (c.value != soft_hyphen && c.value != '\r')
      text.append(typed.substr(at, c.bytes));
    at += c.bytes;
  }
}

} // namespace bodkin
