// Matching a line's lexemes against a phrase: values are captured by name into the tree; where the
// phrase does not fit, what was wanted at the furthest place that fitted is kept for the problem.
#pragma once

#include "language/amount.hpp"
#include "language/lexeme.hpp"
#include "language/phrase.hpp"
#include "language/tree.hpp"

#include <array>
#include <optional>

namespace bodkin::language {

// The piece of a part that was wanted; most parts have but one.
enum class Piece : std::uint8_t {
  whole,
  too_big,    // the number is there and has the right kind, and is past what it may be
  capitals,   // a name in capitals
  reserved,   // a little word where a name belongs
  by,         // of cells
  cross,      // of a size: the x
  height,     // of a size
  down,       // of a place: how far down
  size_after, // of a place: the size after its comma
  edge,       // after `from`, across the page
  edge_down,  // and down it
  per,        // of a price: what it is for
  per_what,   // after `a`
  pack,       // after `per`: how many of what
  money,      // of a price: the sum
  unit,       // of a time, weight or mass: the word after the number
  pounds,     // of a weight in lb: the kind
  row,        // of cells
  more_pages, // after a comma or `but`
  comma,
};

struct Wanted {
  const Part *part = nullptr;
  Piece piece = Piece::whole;
};

struct Failure {
  std::uint32_t at = 0; // a lexeme's number, or one past the last
  std::uint32_t count = 0;
  std::array<Wanted, 24> wanted{};

  void note(std::uint32_t where, const Part *part, Piece piece);
};

// A line on its way to be read. Slips that leave no doubt of what is meant are read as meant, and
// said: they are flagged here.
struct Cursor {
  std::string_view text; // the whole file
  std::span<const Lexeme> lexemes;
  Tree &tree;
  Failure &failure;
  std::uint32_t at = 0;
  const Part *part = nullptr; // the value being read
  const Lexeme *inch_mark = nullptr, *curly = nullptr, *open_text = nullptr;

  bool more() const { return at < lexemes.size(); }
  bool is(LexemeKind kind) const { return more() && lexemes[at].kind == kind; }
  std::string_view words(std::uint32_t i) const {
    return text.substr(lexemes[i].begin, lexemes[i].end - lexemes[i].begin);
  }
  bool word(std::string_view word) {
    if (!is(LexemeKind::word) || words(at) != word)
      return false;
    ++at;
    return true;
  }
  bool wanted(Piece piece) {
    failure.note(at, part, piece);
    return false;
  }
};

// One reader for each kind of value: true with the value, having passed its lexemes; else false
// and the cursor anywhere.
bool read_value(Cursor &cursor, ValueKind kind, Value &value);

// Families of readers, a file each.
bool read_measured(Cursor &cursor, ValueKind kind, Value &value); // length size place angle …
bool read_priced(Cursor &cursor, ValueKind kind, Value &value);   // money weight mass time
bool read_worded(Cursor &cursor, ValueKind kind, Value &value);   // name text colour date …
bool read_pages(Cursor &cursor, ValueKind kind, Value &value);    // pages page numbers

// The number at the cursor with its unit, the unit touching it or in the next word where
// `apart_too`; passes it. None where there is no number or it is over nothing.
std::optional<Amount> read_number(Cursor &cursor, bool apart_too);

// The whole rest of the line from lexeme `from`. Captures made before a failure stay in the tree.
bool match(const Grammar &grammar, const Entry &entry, std::uint32_t from, Cursor &cursor);

// British and American spellings are one: `color` is `colour`, `centered` is `centred`.
bool same_word(std::string_view written, std::string_view ours);

} // namespace bodkin::language
