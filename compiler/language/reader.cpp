#include "language/reader.hpp"

#include "language/meant.hpp"
#include "language/mended.hpp"

#include "language/large_pages.hpp"
#include "language/utf8.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <cstring>
#include <utility>

namespace bodkin::language {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
// Statements are a line each and lines are rarely shorter; untouched room costs nothing.
constexpr std::size_t bytes_a_statement = 16;

// A plain loop: a search for one of a set costs a call for each character.
std::size_t blanks(std::string_view text) {
  std::size_t count = 0;
  while (count < text.size() && (text[count] == ' ' || text[count] == '\t'))
    ++count;
  return count;
}

bool is_comment(std::string_view content) {
  return content.starts_with('#') &&
         (content.size() == 1 || content[1] == ' ' || content[1] == '\t');
}

// `stamp` is no slip of another word where `hand stamp` may stand.
bool stands_behind(std::string_view word, std::string_view parent) {
  const std::vector<const Entry *> saying = entries_saying(word);
  return std::any_of(saying.begin(), saying.end(),
                     [&](const Entry *entry) { return entry_of(entry->word, parent) == entry; });
}

// A program, a picture, an archive, or text of two bytes a letter: no line of it is anybody's.
bool is_no_text(std::string_view text) {
  constexpr long many = 16;
  return std::count(text.begin(), text.end(), '\0') >= many;
}

} // namespace

Tree read(FileId file, const Sources &sources, Problems &problems) {
  return Reader(file, sources, problems).read();
}

Reader::Reader(FileId file, const Sources &sources, Problems &problems)
    : sources_(sources), problems_(problems), grammar_(Grammar::of_table()),
      text_(sources.text(file).substr(0, limits::manuscript_bytes)) {
  tree_.file = file;
  all_text_ = first_malformed(text_) == std::string_view::npos;
  if (!all_text_)
    text_ = tree_.unescaped.emplace_back(is_no_text(text_) ? "" : well_formed(text_));
  tree_.statements.reserve(text_.size() / bytes_a_statement);
  tree_.captures.reserve(text_.size() / bytes_a_statement);
  in_large_pages(tree_.statements.data(), tree_.statements.capacity() * sizeof(Statement));
  in_large_pages(tree_.captures.data(), tree_.captures.capacity() * sizeof(Capture));
  newest_.assign((limits::nesting + 2) * grammar_.entry_count(), no_statement);
  Frame edge;
  edge.context = Context::file;
  frames_.push_back(edge);
}

Tree Reader::read() {
  if (text_.starts_with(byte_order_mark))
    at_ = byte_order_mark.size();
  Line line;
  while (next_line(line))
    read_line(line);
  if (text_.empty() && !all_text_) {
    malformed_at_ = first_malformed(sources_.text(tree_.file));
    malformed_lines_ = 1;
  }
  if (malformed_lines_ != 0)
    problems_.push_back(malformed_bytes(tree_.file, sources_.text(tree_.file),
                                        static_cast<std::uint32_t>(malformed_at_),
                                        malformed_lines_));
  return std::move(tree_);
}

bool Reader::next_line(Line &line) {
  while (at_ < text_.size()) {
    const char *const begin = text_.data() + at_;
    const std::size_t left = text_.size() - at_;
    const auto *end = static_cast<const char *>(std::memchr(begin, '\n', left));
    std::string_view all(begin, end ? static_cast<std::size_t>(end - begin) : left);
    const std::size_t start = at_;
    at_ += all.size() + (end ? 1 : 0);
    if (all.ends_with('\r'))
      all.remove_suffix(1);
    const std::size_t indent = blanks(all);
    line = {all.substr(0, indent), all.substr(indent), static_cast<std::uint32_t>(start + indent)};
    look_at_bytes(line);
    if (!line.content.empty() && !is_comment(line.content))
      return true;
  }
  return false;
}

// A line with malformed bytes is read as far as it goes: they are its one problem.
void Reader::look_at_bytes(const Line &line) {
  malformed_ = false;
  if (all_text_)
    return;
  const std::string_view there = sources_.text(tree_.file).substr(line.begin, line.content.size());
  const std::size_t malformed = first_malformed(there);
  malformed_ = malformed != std::string_view::npos;
  if (malformed_ && malformed_lines_++ == 0)
    malformed_at_ = line.begin + malformed;
}

void Reader::read_line(const Line &line) {
  if (line.indent.size() >= too_deep_from_)
    return;
  too_deep_from_ = std::string_view::npos;
  cut(line.content, line.begin, lexemes_);
  if (lexemes_.empty())
    return;
  indent_ = line.indent;
  if (settle(line) && !frames_.back().unjudged)
    place_word();
}

void Reader::place_word() {
  if (lexemes_[0].kind != LexemeKind::word) {
    if (frames_.back().told_of_prose || turned_round())
      return;
    frames_.back().last_unknown = true;
    tell(lexemes_[0].kind == LexemeKind::colour || typed().words(0).starts_with('#')
             ? comment_sign(typed())
             : no_word(typed()));
    return;
  }
  const std::string_view word = typed().words(0);
  std::uint32_t from = 1;
  if (lexemes_.size() > 1 && lexemes_[1].kind == LexemeKind::colon && typed().touches(0)) {
    tell(colon_after_word(typed()));
    from = 2;
  }
  if (const Entry *entry = known_word(word))
    return statement(*entry, frames_.back(), from, Trust::written);
  if (!adopt(word))
    unknown(word);
}

// `4 up` for `up 4`.
bool Reader::turned_round() {
  const Context context = frames_.back().context;
  if (lexemes_.size() < 2 || lexemes_[0].kind != LexemeKind::number ||
      lexemes_[1].kind != LexemeKind::word || typed().touches(0) || context == Context::none)
    return false;
  const Entry *entry = grammar_.find(typed().words(1), context);
  const std::string meant =
      typed().with(lexemes_[0].begin, lexemes_[1].end,
                   std::string(typed().words(1)) + " " + std::string(typed().words(0)));
  if (!entry || !can_be_read(meant, *entry))
    return false;
  tell(number_before_word(typed(), meant));
  Frame &frame = frames_.back();
  const std::uint32_t number = link(*entry, frame);
  Statement &statement = tree_.statements[number];
  statement.broken = true;
  read_as_meant(typed(), meant, tree_, statement);
  frame.last_opens = opened(statement);
  return true;
}

const Entry *Reader::known_word(std::string_view word) {
  const Context context = frames_.back().context;
  if (context == Context::none)
    return nullptr;
  if (const Entry *entry = grammar_.find(word, context))
    return entry;
  const std::string small = small_letters(word);
  const Entry *entry = small == word ? nullptr : grammar_.find(small, context);
  if (entry)
    tell(capital_word(typed(), *entry));
  return entry;
}

void Reader::unknown(std::string_view word) {
  Frame &frame = frames_.back();
  if (frame.context == Context::none) {
    frame.last_unknown = true;
    if (std::exchange(frame.told_of_nothing, true))
      return;
    const Statement &above = tree_.statements[frame.parent];
    return tell(nothing_under(typed(), above.entry->word, tree_.range(above), sources_));
  }
  if (frame.told_of_prose)
    return;
  if (!keeps_problems()) {
    frame.last_unknown = true;
    return;
  }
  std::vector<std::string_view> words;
  for (const Entry *entry : entries_under(grammar_.name(frame.context)))
    words.push_back(entry->word);
  const std::optional<std::string_view> near = nearest(small_letters(word), words);
  const Entry *guess = near && !stands_behind(word, grammar_.name(frame.context))
                           ? grammar_.find(*near, frame.context)
                           : nullptr;
  const bool takes_prose = frame.context != Context::file && grammar_.find("says", frame.context);
  if (!guess && takes_prose && entries_named(word).empty()) {
    frame.told_of_prose = true;
    frame.last_unknown = true;
    return tell(prose_without_says(typed(), grammar_.name(frame.context)));
  }
  tell(unknown_word(typed(), stands(frame), guess));
  if (guess)
    statement(*guess, frame, 1, Trust::guessed);
  else
    frame.last_unknown = true;
}

std::uint32_t Reader::link(const Entry &entry, Frame &frame) {
  const auto number = static_cast<std::uint32_t>(tree_.statements.size());
  Statement &statement = tree_.statements.emplace_back();
  statement.entry = &entry;
  statement.begin = Offset{lexemes_.front().begin};
  statement.keyword_end = Offset{lexemes_.front().end};
  statement.end = Offset{lexemes_.back().end};
  statement.parent = frame.parent;
  if (frame.last != no_statement)
    tree_.statements[frame.last].next = number;
  else if (frame.parent != no_statement)
    tree_.statements[frame.parent].first_child = number;
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
  Statement &statement = tree_.statements[number];
  match_phrase(statement, phrase_from, trust);
  frame.last_opens = opened(statement);
  if (entry.prose && entry.word == "says" && statement.capture_count == 0 && !statement.broken)
    take_prose(statement, indent_);
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
  if (problem.type.size() == 1 && can_be_read(problem.type.front().line, *statement.entry))
    read_as_meant(typed(), problem.type.front().line, tree_, statement);
  tell(std::move(problem));
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

void Reader::take_prose(Statement &statement, std::string_view indent) {
  std::size_t end = at_;
  std::size_t last = at_; // the end of the last line that is not blank
  bool any = false;
  while (end < text_.size()) {
    const std::size_t stop = std::min(text_.find('\n', end), text_.size());
    const std::string_view line = text_.substr(end, stop - end);
    const std::size_t in = blanks(line);
    const bool blank = in == line.size() || line.substr(in) == "\r";
    if (!blank && in <= indent.size())
      break;
    if (!blank && !std::exchange(any, true))
      statement.prose_indent = static_cast<std::uint32_t>(in);
    end = std::min(stop + 1, text_.size());
    if (!blank)
      last = end;
  }
  if (!any)
    return tell(says_nothing(typed()));
  statement.has_prose = true;
  statement.prose_begin = Offset{static_cast<std::uint32_t>(at_)};
  statement.prose_end = Offset{static_cast<std::uint32_t>(last)};
  at_ = last;
}

Stands Reader::stands(const Frame &frame) const { return {grammar_.name(frame.context), false}; }

bool Reader::keeps_problems() const { return told_ < limits::problems_kept; }

void Reader::tell(Problem problem) {
  if (malformed_)
    return;
  if (keeps_problems())
    problems_.push_back(std::move(problem));
  ++told_;
}

std::string prose_text(const Tree &tree, const Statement &statement, const Sources &sources) {
  std::string_view block =
      sources.text(Range{tree.file, statement.prose_begin, statement.prose_end});
  std::string text;
  text.reserve(block.size());
  while (!block.empty()) {
    const std::size_t end = std::min(block.find('\n'), block.size() - 1) + 1;
    const std::string_view line = block.substr(0, end);
    text += line.substr(std::min<std::size_t>(blanks(line), statement.prose_indent));
    block.remove_prefix(end);
  }
  return text;
}

} // namespace bodkin::language
