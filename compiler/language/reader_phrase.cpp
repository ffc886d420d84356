// A line whose word is known: the statement that it makes, and its phrase matched or mended.
#include "language/meant.hpp"
#include "language/mended.hpp"
#include "language/reader.hpp"

#include <algorithm>
#include <utility>

namespace bodkin::language {

std::uint32_t Reader::link(const Entry &entry, Frame &frame) {
  const auto number = static_cast<std::uint32_t>(tree_.statements.size());
  Statement &statement = tree_.statements.emplace_back();
  statement.entry = &entry;
  statement.begin = Offset{lexemes_.front().begin};
  statement.keyword_end = Offset{lexemes_.front().end};
  statement.end = Offset{lexemes_.back().end};
  statement.parent = frame.parent;
  if (frame.last != no_statement)
    statement.next = std::exchange(tree_.statements[frame.last].next, number);
  else if (frame.parent != no_statement)
    statement.next = std::exchange(tree_.statements[frame.parent].first_child, number);
  else
    tree_.first = number;
  frame.last = number;
  frame.newest_grandchild = no_statement;
  frame.grandchild_opens = Context::none;
  frame.last_unknown = frame.last_taken_in = false;
  return number;
}

void Reader::statement(const Entry &entry, Frame &frame, std::uint32_t phrase_from, Trust trust) {
  const std::uint32_t number = link(entry, frame);
  if (!entry.many && trust == Trust::written)
    tell_twice(entry, number, frame.parent);
  match_phrase(tree_.statements[number], phrase_from, trust);
  const Statement &statement = tree_.statements[number];
  frame.last_opens = opened(statement);
  if (entry.prose && entry.word == "says" && statement.capture_count == 0 && !statement.broken)
    take_prose(tree_.statements[number], indent_);
}

// `saddle stitch` for saddle-stitch: where a word too many follows a name, the name is in doubt,
// and nobody is asked for a thing called by its first half. What is made under a name keeps it.
void Reader::leave_half_names(const Entry &entry, Statement &statement) {
  if (statement.capture_count == 0 || failure_.at == 0 || failure_.at >= lexemes_.size())
    return;
  const Capture &last = tree_.captures.back();
  const bool name = std::holds_alternative<Word>(last.value) && last.name != "name";
  const bool asks = name || std::holds_alternative<Pages>(last.value);
  const std::uint32_t at = failure_.at;
  if (!asks || lexemes_[at].kind != LexemeKind::word || lexemes_[at - 1].kind != LexemeKind::word ||
      last.end != Offset{lexemes_[at - 1].end} || !mended(own_words(typed()), entry, text_))
    return;
  tree_.captures.pop_back();
  --statement.capture_count;
}

void Reader::match_phrase(Statement &statement, std::uint32_t from, Trust trust) {
  statement.first_capture = static_cast<std::uint32_t>(tree_.captures.size());
  Cursor cursor{.text = text_, .lexemes = lexemes_, .tree = tree_, .failure = failure_};
  const bool fits = match(grammar_, *statement.entry, from, cursor);
  statement.capture_count =
      static_cast<std::uint32_t>(tree_.captures.size()) - statement.first_capture;
  statement.broken = !fits;
  if (!fits && keeps_problems())
    leave_half_names(*statement.entry, statement);
  if (!keeps_problems())
    return;
  if (cursor.inch_mark)
    return tell(inch_marks(typed()));
  if (cursor.curly)
    return tell(curly_quotes(typed(), *cursor.curly));
  if (cursor.open_text)
    return tell(open_quote(typed(), *cursor.open_text));
  // Where the word was a guess, its phrase may be another's; that is no second problem.
  if (!fits && trust != Trust::guessed)
    tell_phrase(statement);
}

// What is handed out to be typed is what later rooms work with.
void Reader::tell_phrase(Statement &statement) {
  Problem problem = phrase_slip(typed(), *statement.entry, failure_);
  if (problem.type.size() == 1) {
    const std::string &line = problem.type.front().line;
    const std::size_t end = std::min(line.find('\n'), line.size());
    if (can_be_read(line.substr(0, end), *statement.entry))
      read_as_meant(typed(), line.substr(0, end), tree_, statement);
    if (statement.meant && end < line.size())
      read_below(std::string_view(line).substr(end), statement);
  }
  tell(std::move(problem));
}

// The line that is handed out to stand below a statement is one of the tree as well: `only`.
void Reader::read_below(std::string_view line, Statement &above) {
  const std::string_view own = line.substr(line.find_first_not_of("\n "));
  const Entry *entry = grammar_.find(own.substr(0, own.find(' ')), opened(above));
  if (!entry)
    return;
  Statement below;
  below.entry = entry;
  below.parent = static_cast<std::uint32_t>(&above - tree_.statements.data());
  below.begin = below.keyword_end = above.begin;
  below.end = above.end;
  below.broken = true;
  read_as_meant(typed(), std::string(own), tree_, below);
  above.first_child = static_cast<std::uint32_t>(tree_.statements.size());
  tree_.statements.push_back(below);
}

void Reader::tell_twice(const Entry &entry, std::uint32_t statement, std::uint32_t parent) {
  std::uint32_t &newest = newest_[frames_.size() * grammar_.entry_count() + grammar_.index(entry)];
  const std::uint32_t before = newest;
  newest = statement;
  if (before != no_statement && tree_.statements[before].parent == parent)
    tell(same_fact_twice(typed(), entry, tree_.range(tree_.statements[before]), sources_));
}

Context Reader::opened(const Statement &statement) const {
  const Opening &opening = grammar_.opening(*statement.entry);
  if (!opening.opens_by_choice)
    return opening.opens;
  const Word *kind = tree_.get<Word>(statement, "kind");
  return kind ? grammar_.context(kind->text) : Context::none;
}

} // namespace bodkin::language
