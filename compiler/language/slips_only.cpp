#include "language/look.hpp"
#include "language/mended.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

// Of a longer line only its end is looked at.
constexpr std::size_t most_words = 8;
constexpr std::array<std::string_view, 6> little_words{"for", "to", "in", "the", "of", "with"};
constexpr std::array<std::string_view, 3> after_a_name{"copies", "copy", "run"};

template <std::size_t n>
bool is_one_of(const std::array<std::string_view, n> &words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

// Whose copies a line speaks of, and the lexemes [from, end) that say it.
struct Whose {
  std::size_t from = 0, end = 0;
  std::vector<std::string> names;
};

// The paper of the edition, as its line says it; empty where there is none.
std::string_view paper_of(std::string_view file) {
  for (std::size_t at = file.find("paper "); at != file.npos; at = file.find("paper ", at + 1)) {
    const std::size_t line = at == 0 ? 0 : file.rfind('\n', at) + 1;
    if (line == at ||
        file.substr(line, at - line).find_first_not_of(" \t") != std::string_view::npos)
      continue;
    const std::size_t name = std::min(file.find_first_not_of(' ', at + 6), file.size());
    return file.substr(name, file.find_first_of(" \t\r\n", name) - name);
  }
  return {};
}

// "De Luxe" as it stands in a manuscript: de-luxe.
void join_to_name(std::string &name, std::string_view word) {
  for (const char c : small_letters(word))
    if ((c >= 'a' && c <= 'z') || (!name.empty() && (is_digit(c) || c == '-')))
      name += c;
    else if (c == ' ' && !name.empty())
      name += '-';
}

// The names of lexemes [at, end), parted by commas, `or` and `and`.
std::vector<std::string> names_from(const Typed &line, std::size_t at, std::size_t end) {
  std::vector<std::string> names(1);
  for (; at < end; ++at) {
    const std::string word = small_letters(line.words(at));
    if (line.lexemes[at].kind == LexemeKind::comma || word == "or" || word == "and") {
      names.emplace_back();
    } else if (!is_one_of(little_words, word) && !is_one_of(after_a_name, word)) {
      std::string &name = names.back();
      if (!name.empty() && !name.ends_with('-') &&
          line.lexemes[at - 1].end != line.lexemes[at].begin)
        name += '-';
      join_to_name(name, word);
    }
  }
  std::erase(names, std::string());
  return names;
}

// Whether a line of the file makes a run of this name.
bool is_a_run(std::string_view file, std::string_view name) {
  const std::string called = fmt::format(" called {}", name);
  for (std::size_t at = file.find(called); at != file.npos; at = file.find(called, at + 1)) {
    const std::size_t line = at == 0 ? 0 : file.rfind('\n', at) + 1;
    const std::size_t word = file.find_first_not_of(" \t", line);
    const std::size_t end = at + called.size();
    if (file.substr(word).starts_with("run ") &&
        (end == file.size() || std::string_view(" \t\r\n").find(file[end]) != file.npos))
      return true;
  }
  return false;
}

std::size_t before_little_words(const Typed &line, std::size_t from) {
  while (from > 1 && (line.lexemes[from - 1].kind == LexemeKind::comma ||
                      is_one_of(little_words, line.words(from - 1))))
    --from;
  return from;
}

// A paper or a machine may have the name of a run, and is meant then.
bool is_a_run_alone(std::string_view file, std::string_view name) {
  return is_a_run(file, name) && file.find(fmt::format("\nstock {}", name)) == file.npos &&
         file.find(fmt::format("\nmachine {}", name)) == file.npos;
}

// The name of a run at lexeme `at`, with an `only` behind it.
std::optional<Whose> named_at(const Typed &line, std::size_t at) {
  std::size_t end = at + 1;
  std::vector<std::string> names = names_from(line, at, end);
  if (names.size() != 1 || !is_a_run_alone(line.text, names.front()))
    return {};
  while (end < line.lexemes.size() &&
         (is_one_of(after_a_name, line.words(end)) || small_letters(line.words(end)) == "only"))
    ++end;
  return Whose{before_little_words(line, at), end, std::move(names)};
}

// `… only de-luxe`, or the name of a run among words that are whole without it.
std::vector<Whose> whose(const Typed &line) {
  std::vector<Whose> all;
  const std::size_t size = line.lexemes.size(), first = size - std::min(size - 1, most_words);
  for (std::size_t i = first; i + 1 < size; ++i)
    if (small_letters(line.words(i)) == "only")
      all.push_back({before_little_words(line, i), size, names_from(line, i + 1, size)});
  for (std::size_t i = size - 1; i >= first; --i)
    if (auto named = named_at(line, i))
      all.push_back(*std::move(named));
  return all;
}

// Whether `only` may stand below it; a `fold` of a folding is another than the step of finish.
bool takes_only(const Entry &entry) {
  const Grammar &grammar = Grammar::of_table();
  const Opening &opening = grammar.opening(entry);
  return opening.opens_by_choice || grammar.find("only", opening.opens) != nullptr;
}

std::string indent_of(const Typed &line) {
  const std::uint32_t begin = line.lexemes.front().begin;
  const std::size_t edge = begin == 0 ? 0 : line.text.rfind('\n', begin - 1) + 1;
  const std::string_view indent = line.text.substr(edge, begin - edge);
  return std::string(indent) + (indent.starts_with('\t') ? "\t" : "  ");
}

Problem below_it(const Look &look, const Whose &whose, const std::string &own) {
  Problem problem = slip(
      look, "unknown-kind",
      fmt::format("whose copies these are is said below {}, on a line of its own", look.entry.word),
      fmt::format("{} tells one fact; the line below it, further in, says that "
                  "it holds for the copies of one run alone",
                  look.entry.word));
  problem.range = {look.line.file, look.line.range(whose.from).begin,
                   look.line.range(whose.end - 1).end};
  for (const std::string &name : whose.names)
    problem.type.push_back({fmt::format("{}\n  only {}", own, name),
                            whose.names.size() == 1 ? "both lines" : "a line for each run"});
  if (whose.names.size() == 1 && whose.end == look.line.lexemes.size())
    problem.edits.push_back(
        {{look.line.file, look.line.range(whose.from - 1).end, look.line.whole().end},
         fmt::format("\n{}only {}", indent_of(look.line), whose.names.front())});
  return problem;
}

Problem holds_for_all(const Look &look, const Whose &whose, const std::string &own) {
  Problem problem = slip(look, "unknown-kind",
                         fmt::format("{} speaks of the copies of all runs", look.entry.word),
                         "`only` stands below what can differ from run to run: paper, cover, "
                         "printing, price, sells, paid, things on a page and steps of finish");
  problem.range = {look.line.file, look.line.range(whose.from).begin,
                   look.line.range(whose.end - 1).end};
  problem.type.push_back({own, "for the copies of all runs"});
  return problem;
}

} // namespace

// `price $9 a copy only de-luxe`
Slip only_on_the_line(const Look &look) {
  for (const Whose &one : whose(look.line)) {
    const std::string own =
        look.line.with(look.line.lexemes[one.from - 1].end, look.line.lexemes[one.end - 1].end, "");
    if (!one.names.empty() && can_be_read(own, look.entry))
      return takes_only(look.entry) ? below_it(look, one, own) : holds_for_all(look, one, own);
  }
  return {};
}

namespace {

// `run 40 plain, 2 spare`: all that a line about a run says, whatever its order.
struct RunParts {
  std::string copies, spare, name;
};

RunParts parts_of_run(const Typed &line) {
  constexpr std::array<std::string_view, 5> known{"spare", "spares", "called", "plus", "and"};
  RunParts parts;
  std::string before;
  for (std::size_t i = 1; i < line.lexemes.size(); ++i) {
    const std::string word = small_letters(line.words(i));
    if (line.lexemes[i].kind == LexemeKind::number) {
      (parts.copies.empty() ? parts.copies : parts.spare) = word;
    } else if (word != before && line.lexemes[i].kind != LexemeKind::comma &&
               !is_one_of(known, word) && !is_one_of(little_words, word) &&
               !is_one_of(after_a_name, word)) {
      parts.name += parts.name.empty() ? "" : "-";
      join_to_name(parts.name, word);
      before = word;
    }
  }
  return parts;
}

} // namespace

Slip run_in_parts(const Look &look) {
  if (look.entry.word != "run" || look.line.lexemes.size() > 2 * most_words ||
      look.kind() == LexemeKind::quoted)
    return {};
  const auto &[copies, spare, name] = parts_of_run(look.line);
  const std::string typed =
      fmt::format("run        {} {}{}{}", copies, copies == "1" ? "copy" : "copies",
                  spare.empty() ? "" : fmt::format(", {} spare", spare),
                  name.empty() ? "" : fmt::format(" called {}", name));
  if (copies.empty() || name.empty() || !can_be_read(typed, look.entry))
    return {};
  Problem problem =
      slip(look, "unknown-kind", "a run says its copies, its spares, and what it is called",
           "in this order, so that what is counted is told from what it is called");
  problem.range = look.line.whole();
  problem.edits.push_back({problem.range, typed});
  problem.type.push_back({typed, {}});
  return problem;
}

// `cover in colour`, with no paper said.
Slip cover_without_paper(const Look &look) {
  if (look.entry.word != "cover" || look.at != 1 || !look.wanted_word("on"))
    return {};
  const bool in = look.line.words(1) == "in";
  const std::size_t mode = in ? 2 : 1;
  if (mode + 1 != look.line.lexemes.size())
    return {};
  const std::string_view paper = paper_of(look.line.text);
  const std::string own = fmt::format("cover      on {} in {}", paper, look.line.words(mode));
  const std::string_view how = look.line.words(mode);
  if (paper.empty() || !(in || how == "colour" || how == "color" || how == "black") ||
      !can_be_read(own, look.entry))
    return {};
  Problem problem = slip(look, "missing-part", "cover says its paper before how it is printed",
                         fmt::format("the rest of the copy is on {}; a cover of another paper has "
                                     "the other's name here",
                                     paper));
  problem.range = look.line.whole();
  problem.edits.push_back({problem.range, own});
  problem.type.push_back({own, {}});
  return problem;
}

// `only plain or de-luxe`
Slip only_of_several(const Look &look) {
  if (look.entry.word != "only" || look.line.lexemes.size() > 2 * most_words)
    return {};
  const std::vector<std::string> names = names_from(look.line, 1, look.line.lexemes.size());
  if (names.size() < 2)
    return {};
  Problem problem = slip(look, "unknown-kind", "only speaks of one run",
                         "what several runs have and the others have not is written once for each "
                         "of them; what all have needs no only");
  problem.range = {look.line.file, look.line.range(1).begin, look.line.whole().end};
  problem.type.push_back(
      {fmt::format("only {}", names.front()),
       fmt::format("and the line above it once more, with `only {}` below it", names.back())});
  return problem;
}

} // namespace bodkin::language
