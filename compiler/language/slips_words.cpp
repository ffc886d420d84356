#include "language/mended.hpp"
#include "language/slips.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

// "a picture has no fact called"
std::string lacks(std::string_view under) {
  if (under == "file")
    return "no line at the left edge begins with";
  if (under == "finish")
    return "finish has no step called";
  if (under == "words")
    return "words have no fact called";
  if (under == "page" || under == "spread" || under == "running")
    return fmt::format("a {} has nothing called", under == "running" ? "running thing" : under);
  if (under == "standing")
    return "standing matter has nothing called";
  const bool vowel = std::string_view("aeiou").find(under.front()) != std::string_view::npos;
  return fmt::format("{} {} has no fact called", vowel ? "an" : "a", under);
}

std::string stand_under(std::string_view under) {
  std::vector<std::string> words;
  for (const Entry *entry : entries_under(under))
    words.emplace_back(entry->word);
  if (under == "file")
    return "at the left edge stand: " + listed(words);
  return fmt::format("under {} stand: {}", under, listed(words));
}

std::vector<std::string> homes(std::string_view word) {
  std::vector<std::string> parents;
  for (const Entry *entry : entries_named(word)) {
    std::string_view rest = entry->under;
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find(' '), rest.size());
      const std::string_view parent = rest.substr(0, end);
      parents.emplace_back(parent == "file" ? "the file, at the left edge" : parent);
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  }
  return parents;
}

Problem at_keyword(const Typed &line, std::string check, std::string message) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = line.range(0);
  problem.message = std::move(message);
  return problem;
}

void instead(Problem &problem, const Typed &line, std::size_t i, std::string_view word) {
  if (std::string typed = line.with(i, word); !typed.empty())
    problem.type.push_back({std::move(typed), {}});
  problem.edits.push_back({line.range(i), std::string(word)});
}

// The maker's own line as it could stand somewhere else, whole or made whole.
std::optional<std::string> own_line_as(const Typed &line, const Entry &entry) {
  const std::string own = own_words(line);
  if (can_be_read(own, entry))
    return own;
  const std::string whole = ended(line, entry);
  return can_be_read(whole, entry) ? std::optional(whole) : mended(own, entry, line.text);
}

// `only` under a page belongs to what stands on it: a line deeper.
Problem one_level_deeper(Problem problem, const Typed &line, const std::vector<std::string> &here) {
  problem.message +=
      fmt::format("; it stands a level deeper, under {}",
                  here.size() > 4 ? "the thing that it speaks of" : listed(here, "or"));
  problem.type.push_back({"  " + own_words(line), "under each thing that it speaks of"});
  return problem;
}

void type_at_home(Problem &problem, const Typed &line) {
  const std::vector<const Entry *> entries = entries_named(line.words(0));
  const std::string own = own_words(line);
  const auto fits = std::find_if(entries.begin(), entries.end(),
                                 [&](const Entry *entry) { return can_be_read(own, *entry); });
  const Entry &home = fits == entries.end() ? *entries.front() : **fits;
  const std::string_view parent = home.under.substr(0, home.under.find(' '));
  if (const auto typed = own_line_as(line, home))
    problem.type.push_back(
        {parent == "file" ? *typed : fmt::format("{}\n  {}", parent, *typed), {}});
}

} // namespace

Problem unknown_word(const Typed &line, const Stands &stands, const Entry *guess) {
  const std::string word = line.found(0);
  Problem problem =
      at_keyword(line, "unknown-word", fmt::format("{} {}", lacks(stands.under), word));
  problem.why = stand_under(stands.under);
  if (guess) {
    problem.message += fmt::format("; did you mean {}?", guess->word);
    instead(problem, line, 0, guess->word);
    return problem;
  }
  // `stamp "moon"` for `hand stamp "moon"`.
  for (const Entry *entry : entries_saying(line.words(0))) {
    const std::string whole = fmt::format("{} {}", entry->word, own_words(line));
    if (entry_of(entry->word, stands.under) != entry || !can_be_read(whole, *entry))
      continue;
    problem.message += fmt::format("; it stands behind {}", entry->word);
    problem.edits.push_back(
        {{line.file, line.range(0).begin, line.range(0).begin}, fmt::format("{} ", entry->word)});
    problem.type.push_back({whole, {}});
    return problem;
  }
  if (const std::vector<std::string> parents = homes(line.words(0)); !parents.empty()) {
    std::vector<std::string> here;
    std::copy_if(parents.begin(), parents.end(), std::back_inserter(here),
                 [&](const std::string &parent) { return entry_of(parent, stands.under); });
    if (!here.empty())
      return one_level_deeper(std::move(problem), line, here);
    problem.message += fmt::format("; it stands under {}", listed(parents, "or"));
    type_at_home(problem, line);
  }
  return problem;
}

Problem capital_word(const Typed &line, const Entry &entry) {
  Problem problem = at_keyword(line, "unknown-word",
                               fmt::format("{} is written small: {}", line.found(0), entry.word));
  problem.why = "words and names of a manuscript have no capitals, so that there is one way to "
                "write each";
  instead(problem, line, 0, entry.word);
  return problem;
}

Problem colon_after_word(const Typed &line) {
  Problem problem =
      at_keyword(line, "colon-after-word", fmt::format("no colon stands after {}", line.found(0)));
  problem.range = line.range(1);
  problem.why = "a space parts the word from what follows it";
  std::uint32_t end = line.lexemes[1].end;
  const bool apart = line.lexemes.size() < 3 || !line.touches(1);
  problem.edits.push_back({line.range(1), apart ? "" : " "});
  if (std::string typed = line.with(line.lexemes[1].begin, end, apart ? "" : " "); !typed.empty())
    problem.type.push_back({std::move(typed), {}});
  return problem;
}

Problem no_word(const Typed &line) {
  Problem problem =
      at_keyword(line, "unknown-word",
                 fmt::format("a line begins with a word that says what it is about, not with {}",
                             line.found(0)));
  problem.why = "running text stands under says, indented deeper; a comment begins with # and a "
                "space";
  return problem;
}

Problem number_before_word(const Typed &line, const std::string &meant) {
  Problem problem = at_keyword(
      line, "unknown-word",
      fmt::format("a line begins with the word that says what it is about: {}", line.words(1)));
  problem.range.end = line.range(1).end;
  problem.why = "so each fact is found in its place, and nobody has to read a line to its end";
  problem.edits.push_back({problem.range, fmt::format("{} {}", line.words(1), line.words(0))});
  problem.type.push_back({meant, {}});
  return problem;
}

Problem comment_sign(const Typed &line) {
  Problem problem =
      at_keyword(line, "unknown-word", "a space follows the # of a comment, or it is a colour");
  const std::string_view words = line.words(0);
  const std::size_t text = std::min(words.find_first_not_of('#'), words.size());
  const std::uint32_t begin = line.lexemes[0].begin;
  const auto end = static_cast<std::uint32_t>(begin + text);
  problem.why = "#f6a5b8 is a colour; # f6a5b8 is a remark that nobody prints";
  problem.edits.push_back({{line.file, Offset{begin}, Offset{end}}, "# "});
  if (std::string typed = line.with(begin, end, "# "); !typed.empty())
    problem.type.push_back({std::move(typed), {}});
  return problem;
}

Problem prose_without_says(const Typed &line, std::string_view under) {
  Problem problem =
      at_keyword(line, "unknown-word",
                 fmt::format("{} {}; running text stands under says", lacks(under), line.found(0)));
  problem.range = line.whole();
  problem.why = fmt::format("the lines below {} are facts about it; under says, indented deeper, "
                            "every line is text as it is",
                            under);
  if (const std::string typed = line.with(line.lexemes[0].begin, line.lexemes[0].begin, "");
      !typed.empty())
    problem.type.push_back({"says\n  " + typed, {}});
  return problem;
}

Problem says_nothing(const Typed &line) {
  Problem problem = at_keyword(line, "missing-part", "says has no words");
  problem.why = "they stand on the lines below it, indented deeper than says, or behind it in "
                "straight quotes";
  problem.type.push_back({"says \"Mind the puddle.\"", {}});
  return problem;
}

Problem same_fact_twice(const Typed &line, const Entry &entry, Range before,
                        const Sources &sources) {
  const std::uint32_t above = sources.line_number(before);
  Problem problem = at_keyword(line, "same-fact-twice",
                               fmt::format("{} is already written on line {}", entry.word, above));
  problem.range = line.whole();
  problem.why = "each fact is written once, so that there is no question which line counts; two "
                "are often the trace of two people's changes put together";
  problem.type.push_back(
      {"", fmt::format("keep this line or line {}, and take the other out", above)});
  problem.related.push_back({before, "the first one"});
  return problem;
}

} // namespace bodkin::language
