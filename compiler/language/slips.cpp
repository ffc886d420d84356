#include "language/look.hpp"
#include "language/mended.hpp"
#include "problems/characters.hpp"

#include <algorithm>

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
  // A tab has no picture that could be typed, and parts words as a blank does.
  std::replace(line.begin(), line.end(), '\t', ' ');
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

namespace {

std::size_t words_in(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] != ' ' && (i == 0 || text[i - 1] == ' '))
      ++count;
  return count;
}

// A sum of less than one at the line's end: no pack costs as little.
bool is_small_sum(std::string_view own) {
  const std::string_view last = own.substr(own.find_last_of(' ') + 1);
  const std::size_t point = last.find('.');
  const std::string_view before = last.substr(0, std::min(point, last.size()));
  return point != std::string_view::npos && before.find_first_of("123456789") == before.npos;
}

// A line as it stands, ended by what an example has behind as many words; the example itself where
// the line says nothing of its own yet.
std::string ended_as(const std::string &own, std::string_view example) {
  const std::size_t have = words_in(own);
  if (own.empty() || have < 2 || have >= words_in(example))
    return std::string(example);
  std::size_t at = 0;
  for (std::size_t i = 0; i < have; ++i)
    at = example.find(' ', example.find_first_not_of(' ', at));
  const bool comma = example[at - 1] == ',' && !own.ends_with(',');
  std::string_view rest = example.substr(at);
  if (rest.starts_with(" per ") && is_small_sum(own))
    rest = " a sheet";
  return own + (comma ? "," : "") + std::string(rest);
}

bool same_figures(std::string_view a, std::string_view b) {
  const auto count = [](std::string_view text) {
    return std::count_if(text.begin(), text.end(), is_digit);
  };
  return count(a) == count(b);
}

} // namespace

std::string ended(const Typed &line, const Entry &entry) {
  const std::string own = own_words(line);
  if (line.lexemes.size() > 1)
    if (const auto meant = mended(own, entry, line.text); meant && same_figures(own, *meant))
      return *meant;
  return ended_as(own, entry.example);
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
