#include "language/phrase.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

// A phrase in a maker's terms: "on STOCK, in black or colour".
std::string shown(std::span<const Part> parts, const Grammar &grammar);

std::string shown(const Part &part, const Grammar &grammar) {
  const auto inside = [&] { return shown(grammar.parts(part.first, part.count), grammar); };
  switch (part.part) {
  case PartKind::word:
    return std::string(part.words);
  case PartKind::comma:
    return ",";
  case PartKind::choice: {
    std::string words;
    each_choice(part.words, [&](std::string_view word) {
      words += fmt::format("{}{}", words.empty() ? "" : "|", word);
    });
    return words;
  }
  case PartKind::value: {
    std::string name(words_of(part.kind).name);
    for (char &c : name)
      if (c >= 'a' && c <= 'z')
        c = static_cast<char>(c - 'a' + 'A');
    return part.kind == ValueKind::copyrate ? "RATE" : name;
  }
  case PartKind::optional:
    return fmt::format("[{}]", inside());
  case PartKind::list:
    return fmt::format("{}, …", inside());
  case PartKind::either: {
    std::string branches;
    for (const Part &branch : grammar.parts(part.first, part.count))
      branches += fmt::format("{}{}", branches.empty() ? "" : " or ",
                              shown(grammar.parts(branch.first, branch.count), grammar));
    return branches;
  }
  }
  return {};
}

std::string shown(std::span<const Part> parts, const Grammar &grammar) {
  std::string text;
  for (const Part &part : parts) {
    const std::string words = shown(part, grammar);
    const bool touches = part.part == PartKind::comma ||
                         (part.part == PartKind::optional && words.starts_with("[,"));
    text += text.empty() || touches ? words : " " + words;
  }
  return text;
}

std::string phrase_of(const Entry &entry) {
  const Grammar &grammar = Grammar::of_table();
  const Opening &opening = grammar.opening(entry);
  const std::string phrase = shown(grammar.parts(opening.first, opening.count), grammar);
  return phrase.empty() ? std::string(entry.word) : fmt::format("{} {}", entry.word, phrase);
}

std::vector<std::string_view> parents_of(const Entry &entry) {
  std::vector<std::string_view> parents;
  std::string_view rest = entry.under;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    parents.push_back(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return parents;
}

std::string where_it_stands(const Entry &entry) {
  std::string places;
  for (const std::string_view parent : parents_of(entry))
    places += fmt::format("{}{}", places.empty() ? "" : ", ",
                          parent == "file" ? "at the left edge" : parent);
  return parents_of(entry).front() == "file" ? places : "under " + places;
}

void collect_kinds(const Part &part, std::vector<ValueKind> &kinds) {
  const Grammar &grammar = Grammar::of_table();
  if (part.part == PartKind::value) {
    for (const ValueKind kind : kinds)
      if (kind == part.kind)
        return;
    kinds.push_back(part.kind);
  }
  for (const Part &inner : grammar.parts(part.first, part.count))
    collect_kinds(inner, kinds);
}

std::string kinds_in(const Entry &entry) {
  const Opening &opening = Grammar::of_table().opening(entry);
  std::vector<ValueKind> kinds;
  collect_kinds({.part = PartKind::list, .first = opening.first, .count = opening.count}, kinds);
  std::string text;
  for (const ValueKind kind : kinds) {
    std::string looks(words_of(kind).looks);
    std::erase(looks, '`');
    text += fmt::format("    {} is {}: {}\n",
                        shown({.part = PartKind::value, .kind = kind}, Grammar::of_table()),
                        words_of(kind).called, looks);
  }
  return text;
}

std::string on_one_page(const Entry &entry) {
  std::string text = fmt::format("{}, {}\n\n  {}\n\n  {}\n", entry.word, where_it_stands(entry),
                                 phrase_of(entry), entry.meaning);
  if (!entry.fallback.empty())
    text += fmt::format("  Where it is not written: {}.\n", entry.fallback);
  if (entry.many)
    text += "  It may stand several times.\n";
  if (const std::string kinds = kinds_in(entry); !kinds.empty())
    text += "\n" + kinds;
  text += fmt::format("\n  {}\n", entry.example);
  const Opening &opening = Grammar::of_table().opening(entry);
  if (opening.opens != Context::none) {
    std::string under;
    for (const Entry *inner : entries_under(entry.word))
      under += fmt::format("{}{}", under.empty() ? "" : ", ", inner->word);
    text += fmt::format("\n  Under it stand: {}.\n", under);
  }
  return text;
}

// A bar would end a cell of the table.
std::string in_cell(std::string_view words) {
  std::string text;
  for (const char c : words)
    text += c == '|' ? std::string("\\|") : std::string(1, c);
  return text;
}

std::string kinds_table() {
  std::string text =
      "## Kinds of value\n\n| in a phrase | what it is | looks like |\n|---|---|---|\n";
  for (std::size_t i = 0; i < value_kinds; ++i) {
    const auto kind = static_cast<ValueKind>(i);
    const std::string name = shown({.part = PartKind::value, .kind = kind}, Grammar::of_table());
    if (kind == ValueKind::copyrate || kind == ValueKind::number)
      continue;
    text += fmt::format("| {} | {} | {} |\n", name, words_of(kind).called, words_of(kind).looks);
  }
  return text;
}

std::string section(std::string_view parent) {
  std::string text = parent == "file" ? std::string("\n## At the left edge\n")
                                      : fmt::format("\n## Under {}\n", parent);
  text += "\n| line | meaning | where it is not written | example |\n|---|---|---|---|\n";
  for (const Entry *entry : entries_under(parent))
    text += fmt::format("| `{}` | {}{} | {} | `{}` |\n", in_cell(phrase_of(*entry)),
                        in_cell(entry->meaning), entry->many ? " May stand several times." : "",
                        in_cell(entry->fallback), in_cell(entry->example));
  return text;
}

// A word by itself, not a part of another nor in capitals.
bool holds_word(std::string_view text, std::string_view word) {
  const auto inside = [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; };
  if (word.empty() || !std::all_of(word.begin(), word.end(), inside))
    return false;
  for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
    if ((at == 0 || !inside(text[at - 1])) &&
        (at + word.size() == text.size() || !inside(text[at + word.size()])))
      return true;
  return false;
}

// A page for a word that begins no line: of the entries that say it, and the values that hold it.
std::string inside_others(std::string_view word) {
  std::string text;
  for (std::size_t i = 0; i < value_kinds; ++i) {
    const auto kind = static_cast<ValueKind>(i);
    std::string looks(words_of(kind).looks);
    std::erase(looks, '`');
    if (kind != ValueKind::copyrate && holds_word(looks.substr(0, looks.find(':')), word))
      text += fmt::format("{} may stand in {}: {}\n\n", word, words_of(kind).called, looks);
  }
  const std::vector<const Entry *> saying = entries_saying(word);
  constexpr std::size_t explained = 3;
  for (const Entry *entry : saying)
    if (saying.size() <= explained)
      text +=
          fmt::format("{} stands in a line of {}:\n\n{}\n", word, entry->word, on_one_page(*entry));
    else
      text += fmt::format("  {}\n      under {}\n", entry->example, entry->under);
  if (saying.size() <= explained && !text.empty())
    text.pop_back();
  return text;
}

// Long lines go on below, as far in and two more.
std::string in_columns(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::string_view line = text.substr(0, end);
    const std::size_t in = std::min(line.find_first_not_of(' '), line.size());
    out += line.substr(0, in);
    out += wrapped(line.substr(in), report_columns, static_cast<int>(in) + 2);
    out += '\n';
    text.remove_prefix(line.size() + 1);
  }
  return out;
}

// Facts are no words of a line: they stand in running text.
constexpr std::string_view about_facts =
    "fact, in running text\n\n"
    "  [WORDS](fact:NAME)\n\n"
    "  A figure that the edition fills in wherever prose says it, so that it is always true: what "
    "stands in brackets is put there by its own line under edition. Prose is what stands under "
    "says, behind it, or in a file of words; words in quotes on their own line are printed as they "
    "stand.\n\n"
    "    title, subtitle, maker and series are words of the edition, dated its date\n"
    "    number is the edition's in its series\n"
    "    copies is how many this printing makes, of all runs together\n"
    "    copy is the number of each copy itself, from counts\n"
    "    price is what a copy is sold for, in each run its own\n"
    "    pages is how many pages there are\n\n"
    "  Copy [1](fact:copy) of [50](fact:copies), [$5](fact:price)\n";

} // namespace

std::vector<const Entry *> entries_saying(std::string_view word) {
  std::vector<const Entry *> found;
  for (const Entry &entry : vocabulary())
    if (holds_word(phrase_of(entry), word))
      found.push_back(&entry);
  return found;
}

std::string explanation(std::string_view word) {
  if (word == "fact" || word == "facts")
    return in_columns(about_facts);
  std::string text;
  for (const Entry *entry : entries_named(word))
    text += (text.empty() ? "" : "\n") + on_one_page(*entry);
  return in_columns(text.empty() ? inside_others(word) : text);
}

std::string reference_page() {
  std::string text =
      "# The words of a manuscript\n\n"
      "This page is made from the compiler's own table: `bodkin explain "
      "--reference` prints it.\n\n"
      "A line is a word and what follows it; a line that stands further in belongs "
      "to the one above it. Words in small letters stand as they are, words in "
      "capitals are values of the kinds below, what stands in square brackets may "
      "be left out, and a bar or `or` parts one way from another. A `#` with a space "
      "before and after it begins a remark.\n\n";
  text += kinds_table();
  std::vector<std::string_view> parents;
  for (const Entry &entry : vocabulary())
    for (const std::string_view parent : parents_of(entry)) {
      bool known = false;
      for (const std::string_view other : parents)
        known |= other == parent;
      if (!known)
        parents.push_back(parent);
    }
  for (const std::string_view parent : parents)
    text += section(parent);
  return text;
}

} // namespace bodkin::language
