#include "language/look.hpp"
#include "language/mended.hpp"
#include "language/order.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin::language {

Problem slip(const Look &look, std::string check, std::string message, std::string why) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = look.line.range(look.at);
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

Problem instead(Problem problem, const Look &look, std::size_t i, std::size_t j,
                std::string_view words) {
  const std::uint32_t begin = look.line.lexemes[i].begin;
  const std::uint32_t end = look.line.lexemes[j].end;
  problem.range = {look.line.file, Offset{begin}, Offset{end}};
  problem.edits.push_back({problem.range, std::string(words)});
  if (std::string typed = look.line.with(begin, end, words); !typed.empty())
    problem.type.push_back({std::move(typed), {}});
  return problem;
}

namespace {

// A name in small letters and its last lexeme: `De Luxe` is de-luxe where the line cannot be read
// with de alone.
std::pair<std::string, std::size_t> name_meant(const Look &look) {
  const std::string first = small_letters(look.line.words(look.at));
  std::string name = first;
  for (std::size_t last = look.at;; ++last) {
    const std::uint32_t begin = look.line.lexemes[look.at].begin;
    if (can_be_read(look.line.with(begin, look.line.lexemes[last].end, name), look.entry))
      return {name, last};
    if (last == look.at + 3 || last + 1 >= look.line.lexemes.size() ||
        look.line.lexemes[last + 1].kind != LexemeKind::word)
      return {first, look.at};
    name += "-" + small_letters(look.line.words(last + 1));
  }
}

Slip written_small(const Look &look) {
  if (!look.wants(Piece::capitals))
    return {};
  const auto [name, last] = name_meant(look);
  return instead(slip(look, "unknown-kind", fmt::format("names are written small: {}", name),
                      "words and names have no capitals, so that there is one way to write each; a "
                      "title in quotes may have them"),
                 look, look.at, last, name);
}

// How far a text without quotes goes: up to a comma, a number or a word of the phrase, but no
// further than the rest of the line needs.
std::size_t last_of_text(const Look &look) {
  const std::vector<std::string_view> own = own_words_of_phrase(look.entry);
  const auto &lexemes = look.line.lexemes;
  std::size_t touching = look.at;
  while (touching + 1 < lexemes.size() && look.line.touches(touching))
    ++touching;
  std::size_t last = touching;
  for (std::size_t next = touching + 1;
       next < lexemes.size() && lexemes[next].kind == LexemeKind::word &&
       std::find(own.begin(), own.end(), look.line.words(next)) == own.end();
       ++next)
    last = next;
  return last;
}

Slip text_without_quotes(const Look &look) {
  if (!look.wanted({ValueKind::text}) || look.kind() == LexemeKind::comma)
    return {};
  // A text in quotes comes next: its word stands in the wrong place, as in `words from "a.md" in
  // b`.
  if (look.at + 1U < look.line.lexemes.size() &&
      look.line.lexemes[look.at + 1U].kind == LexemeKind::quoted)
    return {};
  // Where the text is all that the phrase holds, the rest of the line is meant.
  const bool all = look.entry.phrase.find(' ') == std::string_view::npos;
  const std::size_t last = all ? look.line.lexemes.size() - 1 : last_of_text(look);
  const std::uint32_t begin = look.line.lexemes[look.at].begin;
  std::string_view words = look.line.text.substr(begin, look.line.lexemes[last].end - begin);
  if (words.find('"') + 1 == words.size())
    words.remove_suffix(1);
  const bool text_follows =
      last + 1 < look.line.lexemes.size() && look.line.lexemes[last + 1].kind == LexemeKind::quoted;
  if (words.find('"') != std::string_view::npos || text_follows)
    return {};
  return instead(slip(look, "unknown-kind", "a path or a text stands in straight quotes",
                      "only names and words of the language stand bare"),
                 look, look.at, last, fmt::format("\"{}\"", words));
}

// `words notes in body`, where the file has a `text notes`.
Slip text_by_name(const Look &look) {
  const std::string_view word = look.line.words(look.at);
  if (look.entry.word != "words" || look.kind() != LexemeKind::word ||
      look.line.text.find(fmt::format("\ntext {}", word)) == std::string_view::npos)
    return {};
  Slip found = instead(
      slip(look, "unknown-kind", fmt::format("a text by its name stands behind of: of {}", word),
           "words in quotes are set as they are; of takes them from the text of that name"),
      look, look.at, look.at, fmt::format("of {}", word));
  return found;
}

Slip name_in_quotes(const Look &look) {
  if (!look.wanted({ValueKind::name}) || look.wanted({ValueKind::text}) ||
      (look.kind() != LexemeKind::quoted && look.kind() != LexemeKind::curly))
    return {};
  std::string name;
  for (const char c : small_letters(look.line.words(look.at)))
    if ((c >= 'a' && c <= 'z') || (!name.empty() && (is_digit(c) || c == '-')))
      name += c;
    else if (c == ' ' && !name.empty() && name.back() != '-')
      name += '-';
  if (name.empty())
    return {};
  return instead(slip(look, "unknown-kind", "a name stands without quotes",
                      "names are small letters, digits and hyphens; a title in quotes may follow "
                      "the name where a thing is made"),
                 look, look.at, look.at, name);
}

// `rights CC-BY-NC-4.0`
Slip licence_as_right(const Look &look) {
  if (look.entry.word != "rights" || look.at != 1)
    return {};
  const std::uint32_t begin = look.line.lexemes[1].begin;
  std::string_view words = look.line.text.substr(begin, look.line.lexemes.back().end - begin);
  if (words.size() > 1 && words.starts_with('"') && words.ends_with('"'))
    words = words.substr(1, words.size() - 2);
  const std::string small = small_letters(words);
  if ((!small.starts_with("cc") && !small.starts_with("by-") && small != "mit") ||
      words.find('"') != words.npos)
    return {};
  return instead(slip(look, "unknown-kind", "a licence stands in quotes behind the word licence",
                      "by what right a thing is used is told first, and then by which licence"),
                 look, 1, look.line.lexemes.size() - 1, fmt::format("licence \"{}\"", words));
}

// `page 1in colour`: a space is missing, and the page became a length.
Slip page_as_length(const Look &look) {
  if (!look.wanted({ValueKind::pages, ValueKind::page}) || look.kind() != LexemeKind::number)
    return {};
  const std::string_view words = look.line.words(look.at);
  if (!words.ends_with("in") || read_amount(words).unit != "in")
    return {};
  const std::string apart = fmt::format("{} in", words.substr(0, words.size() - 2));
  return instead(slip(look, "unknown-kind",
                      fmt::format("{} is a length; a page is a number by itself", words),
                      "in after a page says what it is printed in, and a space stands before it"),
                 look, look.at, look.at, apart);
}

bool is_whole_number(std::string_view words) {
  return !words.empty() && std::all_of(words.begin(), words.end(), is_digit);
}

// `page 8 to 10`
Slip pages_to(const Look &look) {
  const bool of_pages = look.entry.phrase.find("pages:") != std::string_view::npos;
  const std::size_t next = look.at + 1U;
  if (!of_pages || look.at == 0 || next >= look.line.lexemes.size() ||
      small_letters(look.line.words(look.at)) != "to" ||
      !is_whole_number(look.line.words(look.at - 1U)) || !is_whole_number(look.line.words(next)))
    return {};
  const std::string pages =
      fmt::format("{}-{}", look.line.words(look.at - 1U), look.line.words(next));
  return instead(slip(look, "unknown-kind", fmt::format("pages in a row are written {}", pages),
                      "a list of pages is numbers, commas and a stroke for all those between"),
                 look, look.at - 1U, next, pages);
}

} // namespace

std::optional<Problem> value_slip(const Typed &line, const Entry &entry, const Failure &failure) {
  const Look look{line, entry, failure, failure.at};
  if (Slip found = pounds(look))
    return found;
  if (failure.at >= line.lexemes.size())
    return {};
  for (Slip (*find)(const Look &) :
       {only_on_the_line,    licence_as_right, only_of_several, too_big,
        decimal_comma,       page_as_length,   pages_to,        missing_hash,
        odd_colour,          sides_touch,      length_unit,     grams,
        spare_in_hundredths, other_unit,       no_such_day,     month_in_words,
        country_by_name,     written_small,    text_by_name,    text_without_quotes,
        name_in_quotes,      parts_exchanged,  needless_comma,  run_in_parts,
        cover_without_paper})
    if (Slip found = find(look))
      return found;
  return {};
}

} // namespace bodkin::language
