#include "language/reader.hpp"

#include "language/large_pages.hpp"
#include "language/meant.hpp"
#include "language/mended.hpp"
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

Stands Reader::stands(const Frame &frame) const { return {grammar_.name(frame.context), false}; }

bool Reader::keeps_problems() const { return told_ < limits::problems_kept; }

void Reader::tell(Problem problem) {
  if (malformed_)
    return;
  if (keeps_problems())
    problems_.push_back(std::move(problem));
  ++told_;
}

} // namespace bodkin::language
