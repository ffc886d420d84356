#include "language/look.hpp"
#include "language/mended.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin::language {
namespace {

Problem at_range(std::string check, Range range, std::string message) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = range;
  problem.message = std::move(message);
  return problem;
}

void type(Problem &problem, std::string line, std::string remark = {}) {
  if (!line.empty())
    problem.type.push_back({std::move(line), std::move(remark)});
}

// Why nothing is guessed, and what the line is there to say.
std::string no_guess(const Entry &entry) {
  std::string says(entry.meaning);
  if (says.ends_with('.'))
    says.pop_back();
  if (says.size() > 1 && (says[1] == ' ' || (says[1] >= 'a' && says[1] <= 'z')))
    says[0] = static_cast<char>(says[0] | 0x20);
  return fmt::format("a guess would be printed; {} stands for {}", entry.word, says);
}

// A line that ends before its phrase does.
Problem missing_part(const Typed &line, const Entry &entry, const Failure &failure) {
  const std::string wanted = wanted_words(failure);
  Problem problem =
      at_range("missing-part", line.whole(),
               line.lexemes.size() == 1
                   ? fmt::format("{} alone says nothing: {} comes next", entry.word, wanted)
                   : fmt::format("{} stops short: {} comes next", entry.word, wanted));
  problem.why = no_guess(entry);
  const std::string own = own_words(line), whole = ended(line, entry);
  type(problem, whole);
  if (!own.empty() && whole.starts_with(own))
    problem.edits.push_back(
        {{line.file, line.whole().end, line.whole().end}, whole.substr(own.size())});
  return problem;
}

// The change from the line as it stands to `typed`, without what both begin and end with.
Edit change_to(const Typed &line, std::string_view own, std::string_view typed) {
  std::size_t same = 0, tail = 0;
  while (same < own.size() && same < typed.size() && own[same] == typed[same])
    ++same;
  while (tail + same < own.size() && tail + same < typed.size() &&
         own[own.size() - 1 - tail] == typed[typed.size() - 1 - tail])
    ++tail;
  const auto begin = static_cast<std::uint32_t>(line.lexemes.front().begin + same);
  const auto end = static_cast<std::uint32_t>(line.lexemes.back().end - tail);
  return {{line.file, Offset{begin}, Offset{end}},
          std::string(typed.substr(same, typed.size() - same - tail))};
}

// Words after a phrase that is whole.
bool is_left_over(const Typed &line, const Failure &failure) {
  for (std::uint32_t i = 0; i < failure.count; ++i)
    if (failure.wanted[i].piece != Piece::comma && failure.wanted[i].part->part != PartKind::comma)
      return false;
  return failure.at < line.lexemes.size();
}

Problem left_over(const Typed &line, const Entry &entry, std::uint32_t at) {
  const Range range{line.file, line.range(at).begin, line.whole().end};
  Problem problem = at_range(
      "unknown-kind", range,
      fmt::format("{} has no room for {}", entry.word, line.found(at, line.lexemes.size() - 1)));
  problem.why = entry.phrase.empty()
                    ? fmt::format("{} stands alone on its line", entry.word)
                    : fmt::format("{} is written like this: {}", entry.word, entry.example);
  if (const std::optional<std::string> meant = mended(own_words(line), entry, line.text)) {
    type(problem, *meant);
    problem.edits.push_back(change_to(line, own_words(line), *meant));
    return problem;
  }
  type(problem, line.with(line.lexemes[at - 1].end, line.lexemes.back().end, ""));
  problem.edits.push_back(
      {{line.file, Offset{line.lexemes[at - 1].end}, line.whole().end}, std::string()});
  return problem;
}

// The nearest of the words that could stand here.
std::optional<std::string_view> meant(const Failure &failure, std::string_view word) {
  std::vector<std::string_view> words;
  for (std::uint32_t i = 0; i < failure.count; ++i) {
    const Part &part = *failure.wanted[i].part;
    if (part.part == PartKind::word || part.part == PartKind::choice)
      each_choice(part.words, [&words](std::string_view choice) { words.push_back(choice); });
    else if (part.kind == ValueKind::mode)
      words.insert(words.end(), {"black", "colour"});
  }
  return nearest(word, words);
}

// `hand rubber stamp`: a word too many before the one that could stand here.
std::optional<std::uint32_t> word_before_it(const Typed &line, const Entry &entry,
                                            const Failure &failure) {
  const std::uint32_t at = failure.at, next = at + 1;
  if (next >= line.lexemes.size() || line.lexemes[at].kind != LexemeKind::word)
    return {};
  const std::uint32_t begin = line.lexemes[at].begin, end = line.lexemes[next].begin;
  if (meant(failure, line.words(next)) != line.words(next) ||
      !can_be_read(line.with(begin, end, ""), entry))
    return {};
  return next;
}

// The whole of what touches: `8-page-mini` falls into two lexemes.
std::size_t touching_last(const Typed &line, std::size_t at) {
  while (line.touches(at) && line.lexemes[at + 1].kind != LexemeKind::comma)
    ++at;
  return at;
}

// `-5` where things are counted.
std::optional<std::string> without_minus(const Typed &line, const Entry &entry, std::uint32_t at) {
  const std::string_view words = line.words(at);
  if (line.lexemes[at].kind != LexemeKind::number || !words.starts_with('-'))
    return {};
  std::string typed = line.with(at, words.substr(1));
  return can_be_read(typed, entry) ? std::optional(typed) : std::nullopt;
}

Problem unknown_kind(const Typed &line, const Entry &entry, const Failure &failure) {
  const std::uint32_t at = failure.at;
  const std::size_t last = touching_last(line, at);
  Problem problem = at_range(
      "unknown-kind", {line.file, line.range(at).begin, line.range(last).end},
      fmt::format("{} is wanted here, not {}", wanted_words(failure), line.found(at, last)));
  problem.why = no_guess(entry);
  if (const auto next = word_before_it(line, entry, failure)) {
    const std::uint32_t begin = line.lexemes[at].begin, end = line.lexemes[*next].begin;
    problem.message += fmt::format("; did you mean {}?", line.words(*next));
    problem.edits.push_back({{line.file, Offset{begin}, Offset{end}}, ""});
    type(problem, line.with(begin, end, ""));
  } else if (const auto near = meant(failure, small_letters(line.words(at)))) {
    problem.message += fmt::format("; did you mean {}?", *near);
    problem.edits.push_back({line.range(at), std::string(*near)});
    type(problem, line.with(at, *near));
  } else if (const auto positive = without_minus(line, entry, at)) {
    problem.edits.push_back({line.range(at), std::string(line.words(at).substr(1))});
    type(problem, *positive);
  }
  return problem;
}

Problem found_slip(const Typed &line, const Entry &entry, const Failure &failure) {
  if (std::optional<Problem> slip = value_slip(line, entry, failure))
    return *std::move(slip);
  if (failure.at >= line.lexemes.size())
    return missing_part(line, entry, failure);
  if (is_left_over(line, failure))
    return left_over(line, entry, failure.at);
  return unknown_kind(line, entry, failure);
}

// Only the maker's own line is handed out: where no small change makes it readable, its form is
// shown instead, and nobody types somebody else's figures.
void show_form(Problem &problem, const Entry &entry) {
  if (problem.why == no_guess(entry))
    problem.why += fmt::format("; it is written like this: {}", entry.example);
}

// A line that cannot be read as it is typed gives way to the maker's own line with little changed.
void type_own_line(Problem &problem, const Typed &line, const Entry &entry) {
  const std::string own = own_words(line);
  if (problem.type.size() > 1 || own.empty() || line.lexemes.size() < 2 ||
      line.lexemes[1].kind == LexemeKind::colon)
    return;
  const std::string typed = problem.type.empty() ? own : problem.type.front().line;
  if (typed.empty() || typed.find('\n') != typed.npos || can_be_read(typed, entry))
    return;
  if (const std::optional<std::string> meant = mended(typed, entry, line.text)) {
    problem.type = {{*meant, {}}};
    problem.edits = {change_to(line, own, *meant)};
  } else if (problem.type.empty()) {
    show_form(problem, entry);
  }
}

} // namespace

Problem phrase_slip(const Typed &line, const Entry &entry, const Failure &failure) {
  Problem problem = found_slip(line, entry, failure);
  type_own_line(problem, line, entry);
  return problem;
}

Problem curly_quotes(const Typed &line, const Lexeme &text) {
  const Range range{line.file, Offset{text.begin}, Offset{text.end}};
  const std::string_view words = line.text.substr(text.begin, text.end - text.begin);
  std::string_view inside = words;
  for (const std::string_view quote :
       {"\u201c", "\u201d", "\u201e", "\u00ab", "\u2018", "\u2019", "'"})
    if (inside.starts_with(quote)) {
      inside.remove_prefix(quote.size());
      break;
    }
  for (const std::string_view quote : {"\u201c", "\u201d", "\u00bb", "\u2018", "\u2019", "'", "\""})
    if (inside.ends_with(quote)) {
      inside.remove_suffix(quote.size());
      break;
    }
  const bool single = words.starts_with('\'');
  Problem problem = at_range("curly-quotes", range,
                             single ? "a path or a text stands in double quotes"
                                    : "these quotes are curly; a path or a text stands in straight "
                                      "ones");
  problem.why = single ? "a single quote may stand inside a text, so it cannot end one"
                       : "a word processor or a phone bent them; inside prose curly quotes are "
                         "right and stay";
  const std::string straight = fmt::format("\"{}\"", inside);
  problem.edits.push_back({range, straight});
  type(problem, line.with(text.begin, text.end, straight));
  return problem;
}

Problem open_quote(const Typed &line, const Lexeme &text) {
  const Range range{line.file, Offset{text.begin}, Offset{text.end}};
  Problem problem =
      at_range("missing-part", range, "this text begins with a quote and has none at its end");
  problem.why = "a text in quotes ends on its own line; longer ones stand under says or in a file";
  std::string_view words = line.text.substr(text.begin, text.end - text.begin);
  words = words.substr(0, words.find_last_not_of(" \t") + 1);
  if (words.ends_with("\u201d"))
    words.remove_suffix(3);
  const std::string closed = std::string(words) + (words.ends_with('\\') ? "\\\"" : "\"");
  const auto end = static_cast<std::uint32_t>(text.begin + words.size());
  problem.edits.push_back({{line.file, Offset{end}, Offset{text.end}}, "\""});
  type(problem, line.with(text.begin, text.end, closed));
  return problem;
}

namespace {

std::size_t inch_mark_size(std::string_view words) {
  for (const std::string_view mark : {"\"", "\u2033", "\u201d", "''"})
    if (words.ends_with(mark))
      return mark.size();
  return 0;
}

} // namespace

Problem inch_marks(const Typed &line) {
  std::string typed;
  std::string_view marked;
  std::uint32_t begin = line.lexemes.front().begin;
  Problem problem = at_range("inch-marks", line.whole(), "inches are written in, not with a mark");
  bool first = true;
  for (std::size_t i = 0; i < line.lexemes.size(); ++i) {
    if (line.lexemes[i].kind != LexemeKind::number)
      continue;
    const Amount amount = read_amount(line.words(i));
    if (!amount.inch_mark)
      continue;
    const std::string_view words = line.words(i);
    const auto mark = static_cast<std::uint32_t>(line.lexemes[i].end - inch_mark_size(words));
    typed += std::string(line.text.substr(begin, mark - begin)) + "in";
    begin = line.lexemes[i].end;
    problem.edits.push_back({{line.file, Offset{mark}, Offset{begin}}, "in"});
    if (std::exchange(first, false)) {
      problem.range = line.range(i);
      marked = words;
    }
    problem.range.end = Offset{begin};
  }
  typed += line.text.substr(begin, line.lexemes.back().end - begin);
  problem.why = fmt::format(
      "a straight quote begins a text, so {} cannot be told from the end of one", marked);
  if (typed.size() < 400)
    type(problem, typed);
  return problem;
}

} // namespace bodkin::language
