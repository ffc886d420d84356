// What goes wrong on one line of a manuscript, each as a small function that says it in words: what
// stands there, why that cannot be, and the whole line to type instead.
#pragma once

#include "language/lexeme.hpp"
#include "language/match.hpp"
#include "language/phrase.hpp"
#include "language/tree.hpp"

#include <span>
#include <string>
#include <string_view>

namespace bodkin::language {

// A line that has a problem, in its file.
struct Typed {
  FileId file = FileId::none;
  std::string_view text; // the whole file
  std::span<const Lexeme> lexemes;

  std::string_view words(std::size_t i) const {
    return text.substr(lexemes[i].begin, lexemes[i].end - lexemes[i].begin);
  }
  Range range(std::size_t i) const {
    return {file, Offset{lexemes[i].begin}, Offset{lexemes[i].end}};
  }
  Range whole() const { return {file, Offset{lexemes.front().begin}, Offset{lexemes.back().end}}; }
  // No white space between lexeme i and the one after it.
  bool touches(std::size_t i) const {
    return i + 1 < lexemes.size() && lexemes[i].end == lexemes[i + 1].begin;
  }
  // The line as typed, from its first word, with [begin, end) replaced; empty where it is too long
  // to be typed again.
  std::string with(std::uint32_t begin, std::uint32_t end, std::string_view instead) const;
  std::string with(std::size_t i, std::string_view instead) const {
    return with(lexemes[i].begin, lexemes[i].end, instead);
  }
  // A few words for a message: shortened, nothing in it that moves a cursor.
  std::string found(std::size_t i) const;
  std::string found(std::size_t first, std::size_t last) const;
};

// slips_words.cpp: the word that a line begins with.
struct Stands {
  std::string_view under; // the context's name, "file" at the file's level
  bool closed = false;    // a fact of one line, under which nothing stands
};
Problem unknown_word(const Typed &line, const Stands &stands, const Entry *guess);
Problem capital_word(const Typed &line, const Entry &entry);
Problem colon_after_word(const Typed &line);
Problem no_word(const Typed &line);
Problem number_before_word(const Typed &line, const std::string &meant);
Problem comment_sign(const Typed &line);
Problem prose_without_says(const Typed &line, std::string_view under);
Problem says_nothing(const Typed &line);
Problem same_fact_twice(const Typed &line, const Entry &entry, Range before,
                        const Sources &sources);

// slips_depth.cpp: how far a line stands in.
struct Belongs {
  std::string_view word; // what it belongs to: "qr"
  Range line;            // that one's line
  std::string indent;    // what this line's indentation should be
};
Problem not_here(const Typed &line, const Stands &stands, const Belongs &belongs,
                 const Sources &sources);
Problem nothing_under(const Typed &line, std::string_view above, Range above_line,
                      const Sources &sources);
Problem between_levels(const Typed &line, std::string_view indent, Range sibling,
                       const Sources &sources);
Problem not_at_edge(const Typed &line, std::string_view above, Range above_line,
                    const Sources &sources);
Problem first_line_indented(const Typed &line);
Problem mixed_indent(const Typed &line, std::string_view indent, std::string_view wanted);
Problem too_deep(const Typed &line);
Problem malformed_bytes(FileId file, std::string_view text, std::uint32_t at, std::size_t lines);

// slips_phrase.cpp: what follows the word.
Problem phrase_slip(const Typed &line, const Entry &entry, const Failure &failure);
Problem curly_quotes(const Typed &line, const Lexeme &text);
Problem open_quote(const Typed &line, const Lexeme &text);
Problem inch_marks(const Typed &line);

// slips_values.cpp: a value of the right kind with a slip in it; none where it is something else.
std::optional<Problem> value_slip(const Typed &line, const Entry &entry, const Failure &failure);

// wanted.cpp: "a length, or the word from".
std::string wanted_words(const Failure &failure);

// The line as it stands, ended by words alone where they are all that it lacks, else as the entry's
// example ends.
std::string ended(const Typed &line, const Entry &entry);
// The line as it stands, from its first word; empty where it is too long to be typed again.
std::string own_words(const Typed &line);
// Lower-case of ASCII letters, whatever the locale.
std::string small_letters(std::string_view word);
// "1, 2 and 3"
std::string listed(const std::vector<std::string> &items, std::string_view last = "and");

} // namespace bodkin::language
