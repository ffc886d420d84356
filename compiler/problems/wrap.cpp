#include "problems/wrap.hpp"

#include "problems/characters.hpp"

namespace bodkin {
namespace {

// One paragraph of words, set from column `hanging` on.
void set_words(std::string &out, std::string_view text, int columns, int hanging) {
  int used = hanging;
  bool first = true;
  while (!text.empty()) {
    const std::size_t end = text.find(' ');
    const std::string_view word = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (word.empty())
      continue;
    const int width = columns_of(word);
    if (!first && used + 1 + width > columns) {
      out.append("\n").append(static_cast<std::size_t>(hanging), ' ');
      used = hanging;
    } else if (!first) {
      out += ' ';
      ++used;
    }
    out += word;
    used += width;
    first = false;
  }
}

} // namespace

std::string wrapped(std::string_view text, int columns, int hanging) {
  std::string out;
  for (;;) {
    const std::size_t end = text.find('\n');
    set_words(out, text.substr(0, end), columns, hanging);
    if (end == std::string_view::npos)
      return out;
    text.remove_prefix(end + 1);
    out += '\n';
    if (!text.starts_with('\n') && !text.empty())
      out.append(static_cast<std::size_t>(hanging), ' ');
  }
}

} // namespace bodkin
