// The vocabulary: every keyword once. The parser, "did you mean", the reference page, `bodkin
// explain` and editors are all made from this table.
//
// A phrase is written in a small language of its own, which is also what the reference prints:
//   over                a word that stands there as it is
//   lead:length         a value of a kind, captured under a name
//   grain:long|short    one of a few words, captured under a name
//   [ … ]               may be left out
//   ( … / … )           one or the other, the first that fits
//   { … }               one or more, parted by commas
//   ,                   a comma
// Kinds (kinds.cpp says what each looks like): name text count number length size typesize across
// down place cells spot angle share money rate copyrate weight mass time colour pages page date
// language country currency mode.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin::language {

struct Entry {
  std::string_view word{};
  std::string_view
      under; // where it may stand: parents parted by blanks, `file` for the file's level
  std::string_view phrase{};
  std::string_view fallback{}; // what holds where it is not written; empty: nothing
  std::string_view meaning{};  // one sentence
  std::string_view example{};  // one line, as under its parent
  bool many = false;           // may be written several times under one parent
  bool prose = false;          // may hold a `says` block
};

// All entries, in the order of the reference page.
std::span<const Entry> vocabulary();
// The entry of `word` under `parent` ("file", "edition", "picture" …), or null.
const Entry *entry_of(std::string_view word, std::string_view parent);
std::vector<const Entry *> entries_under(std::string_view parent);
std::vector<const Entry *> entries_named(std::string_view word);

// The nearest of some words by the fewest slips of the finger (letters left out, put in, changed or
// swapped); none where even the nearest is a different word.
std::optional<std::string_view> nearest(std::string_view word,
                                        std::span<const std::string_view> among);

// The entries in whose phrases a word stands as it is, `grain` in that of `sheet`.
std::vector<const Entry *> entries_saying(std::string_view word);

// One page of words about a keyword, or about one that stands in the phrases of others or in their
// values, as `bodkin explain` prints it; and the whole reference in
// Markdown, as committed beside the shelf.
std::string explanation(std::string_view word);
std::string reference_page();

} // namespace bodkin::language
