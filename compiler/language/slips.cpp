#include "language/slips.hpp"

#include "problems/characters.hpp"

namespace bodkin::language {
namespace {
constexpr std::size_t longest_line = 400;
constexpr std::size_t longest_found = 60;
} // namespace

std::string Typed::with(std::uint32_t begin, std::uint32_t end, std::string_view instead) const {
  const std::uint32_t first = lexemes.front().begin;
  const std::uint32_t last = std::max(lexemes.back().end, end);
  if (last - first > longest_line)
    return {};
  std::string line(text.substr(first, begin - first));
  line += instead;
  line += text.substr(end, last - end);
  return harmless(line);
}

std::string Typed::found(std::size_t i) const { return found(i, i); }

std::string Typed::found(std::size_t first, std::size_t last) const {
  const std::string_view all =
      text.substr(lexemes[first].begin, lexemes[last].end - lexemes[first].begin);
  if (all.size() <= longest_found)
    return harmless(all);
  return harmless(all.substr(0, character_start(all, longest_found))) + "…";
}

std::string own_words(const Typed &line) {
  const std::uint32_t end = line.lexemes.back().end;
  return line.with(end, end, "");
}

std::string small_letters(std::string_view word) {
  std::string small(word);
  for (char &c : small)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return small;
}

std::string listed(const std::vector<std::string> &items, std::string_view last) {
  std::string text;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i != 0)
      text += i + 1 == items.size() ? " " + std::string(last) + " " : ", ";
    text += items[i];
  }
  return text;
}

} // namespace bodkin::language
