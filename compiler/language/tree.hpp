// A manuscript as read: statements, one a line, with the values of their phrases and the exact
// range of every part. Flat vectors, nothing owned by a statement; views reach into the source
// text, which Sources keeps.
#pragma once

#include "language/value.hpp"
#include "language/vocabulary.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <cstdint>
#include <deque>
#include <string>
#include <vector>

namespace bodkin::language {

struct Capture {
  std::string_view name; // as in the phrase
  Value value;
  Offset begin{}, end{};
};

inline constexpr std::uint32_t no_statement = 0xffffffff;

struct Statement {
  const Entry *entry = nullptr; // never null in a tree: unknown words are problems
  Offset begin{}, end{};        // the line from its keyword to its last word, comment left out
  Offset keyword_end{};
  std::uint32_t first_capture = 0, capture_count = 0;
  std::uint32_t parent = no_statement, first_child = no_statement, next = no_statement;
  // `says` with a block: the block's lines, indentation and all, from its first line to its last.
  Offset prose_begin{}, prose_end{};
  std::uint32_t prose_indent = 0; // columns to take off each line of the block
  bool has_prose = false;
  bool broken = false; // its phrase had a problem: captures are those before it
  bool meant = false;  // broken, and captures are those of the line that is handed out to be typed
};

struct Tree {
  FileId file = FileId::none;
  std::vector<Statement> statements; // in order of lines
  std::vector<Capture> captures;
  std::vector<PageItem> page_items;
  std::deque<std::string> unescaped;  // texts that held a backslash
  std::uint32_t first = no_statement; // the first statement of the file's level

  Range range(const Statement &s) const { return {file, s.begin, s.end}; }
  Range keyword(const Statement &s) const { return {file, s.begin, s.keyword_end}; }
  Range range(const Capture &c) const { return {file, c.begin, c.end}; }
  std::span<const Capture> captured(const Statement &s) const {
    return std::span(captures).subspan(s.first_capture, s.capture_count);
  }
  const Capture *find(const Statement &s, std::string_view name) const {
    for (const Capture &capture : captured(s))
      if (capture.name == name)
        return &capture;
    return nullptr;
  }
  template <typename T>
  const T *get(const Statement &s, std::string_view name) const {
    const Capture *capture = find(s, name);
    return capture ? std::get_if<T>(&capture->value) : nullptr;
  }
  template <typename Visit>
  void each_child(const Statement &s, Visit visit) const {
    for (std::uint32_t i = s.first_child; i != no_statement; i = statements[i].next)
      visit(statements[i]);
  }
  template <typename Visit>
  void each_top(Visit visit) const {
    for (std::uint32_t i = first; i != no_statement; i = statements[i].next)
      visit(statements[i]);
  }
};

// Reads a whole file of Sources. Every wrong line is a problem of its own and hides no other; its
// children are still read where they make sense.
Tree read(FileId file, const Sources &sources, Problems &problems);

// The prose of a `says` block with its indentation taken off, ready for CommonMark. Lines keep
// their count, so line n of the result is line n of the block.
std::string prose_text(const Tree &tree, const Statement &statement, const Sources &sources);

} // namespace bodkin::language
