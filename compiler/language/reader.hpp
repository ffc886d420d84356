// Reading a manuscript line by line. Indentation is a stack of frames; each line is judged by
// itself, so that one slip is one problem and what stands below it is still read.
#pragma once

#include "language/match.hpp"
#include "language/slips.hpp"
#include "language/tree.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace bodkin::language {

// A plain loop: a search for one of a set costs a call for each character.
inline std::size_t blanks(std::string_view text) {
  std::size_t count = 0;
  while (count < text.size() && (text[count] == ' ' || text[count] == '\t'))
    ++count;
  return count;
}

// Lines that stand under one statement, or at the left edge.
struct Frame {
  std::string_view indent;
  std::string_view other; // a second form of indentation that was found in it, and said
  bool has_other = false;
  std::uint32_t parent = no_statement;
  std::uint32_t last = no_statement;              // the newest statement of this frame
  std::uint32_t newest_grandchild = no_statement; // the newest one under `last`
  Context context = Context::none;                // what may stand here
  Context last_opens = Context::none;             // what may stand under `last`
  Context grandchild_opens = Context::none;       // and under `newest_grandchild`, if taken in
  bool last_taken_in = false; // `last` stood too far out and said so; what is under it is let be
  bool last_unknown = false;  // the newest line is no statement, and what is under it is let be
  bool unjudged = false;      // under such a line
  bool told_of_prose = false;
  bool told_of_nothing = false;
};

// How sure it is that a line is what its word says: as written; taken in from a wrong indentation;
// guessed from a misspelt word. A slip that was told is not told again as something else.
enum class Trust { written, taken_in, guessed };

class Reader {
public:
  Reader(FileId file, const Sources &sources, Problems &problems);
  Tree read();

private:
  struct Line {
    std::string_view indent, content;
    std::uint32_t begin = 0; // of the content
  };

  bool next_line(Line &line); // the next that says something
  void read_line(const Line &line);
  void look_at_bytes(const Line &line);

  // reader_depth.cpp
  bool settle(const Line &line);
  void descend(std::string_view indent);
  void ascend();
  void settle_between(const Line &line);
  void settle_mixed(const Line &line);
  bool adopt(std::string_view word);
  bool adopt_under_last(std::string_view word);
  bool adopt_further_out(std::string_view word);
  bool adopt_at_edge(std::string_view word);
  bool knows(const Frame &frame, std::string_view word) const;
  bool deeper_follows() const;

  void place_word();
  const Entry *known_word(std::string_view word);
  void unknown(std::string_view word);
  bool turned_round();
  void statement(const Entry &entry, Frame &frame, std::uint32_t phrase_from, Trust trust);
  std::uint32_t link(const Entry &entry, Frame &frame);
  void leave_half_names(const Entry &entry, Statement &statement);
  void match_phrase(Statement &statement, std::uint32_t from, Trust trust);
  void tell_phrase(Statement &statement);
  void read_below(std::string_view line, Statement &above);
  void tell_twice(const Entry &entry, std::uint32_t statement, std::uint32_t parent);
  void take_prose(Statement &statement, std::string_view indent);
  Context opened(const Statement &statement) const;
  void tell(Problem problem);
  bool keeps_problems() const;
  Typed typed() const { return {tree_.file, text_, lexemes_}; }
  Stands stands(const Frame &frame) const;
  std::string_view context_name(const Frame &frame) const;

  const Sources &sources_;
  Problems &problems_;
  const Grammar &grammar_;
  std::string_view text_;
  Tree tree_;
  std::vector<Lexeme> lexemes_;
  Failure failure_;
  std::vector<Frame> frames_;
  // The newest statement of each entry at each depth; it counts where its parent is the same.
  std::vector<std::uint32_t> newest_;
  std::string_view indent_; // of the line being read
  std::size_t at_ = 0;      // of the next line
  std::size_t told_ = 0;
  std::size_t too_deep_from_ = std::string_view::npos; // indentation from which lines are left out
  bool all_text_ = true;   // no line needs to be looked through for malformed bytes
  bool malformed_ = false; // the line being read holds such bytes
  std::size_t malformed_lines_ = 0, malformed_at_ = 0;
};

} // namespace bodkin::language
