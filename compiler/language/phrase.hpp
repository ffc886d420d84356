// The phrases of the vocabulary, compiled once from the table into a flat list of parts, and the
// question which entry a word is under a parent.
#pragma once

#include "language/vocabulary.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace bodkin::language {

enum class ValueKind : std::uint8_t {
  name,
  text,
  count,
  number,
  length,
  size,
  typesize,
  across,
  down,
  place,
  cells,
  spot,
  angle,
  share,
  money,
  rate,
  copyrate,
  weight,
  mass,
  time,
  colour,
  pages,
  page,
  numbers,
  date,
  language,
  country,
  currency,
  mode,
};
constexpr std::size_t value_kinds = static_cast<std::size_t>(ValueKind::mode) + 1;

// How a kind is called in a phrase, in a sentence ("a length"), and what it looks like.
struct KindWords {
  std::string_view name, called, looks;
};
const KindWords &words_of(ValueKind kind);

enum class PartKind : std::uint8_t { word, value, choice, comma, optional, either, list };

struct Part {
  PartKind part = PartKind::word;
  ValueKind kind{};                   // of a value
  std::string_view name{};            // what a value or a choice is captured under
  std::string_view words{};           // a word as it is; a choice's words parted by |
  std::uint32_t first = 0, count = 0; // parts inside; of `either` its branches, each a list
};

// What lines may stand somewhere: the file's level, or under an entry that opens a block.
enum class Context : std::uint16_t { file = 0, none = 0xffff };

struct Opening {
  std::uint32_t first = 0, count = 0; // the phrase, in Grammar::parts
  Context opens = Context::none;      // what may stand under it, where its keyword settles that
  bool opens_by_choice = false;       // `every picture`: what its first value names
};

class Grammar {
public:
  // Compiled on first use, the same ever after.
  static const Grammar &of_table();

  const Entry *find(std::string_view word, Context under) const;
  Context context(std::string_view parent) const; // none where nothing stands under it
  std::string_view name(Context context) const;
  std::size_t index(const Entry &entry) const;
  std::size_t entry_count() const { return openings_.size(); }
  const Opening &opening(const Entry &entry) const { return openings_[index(entry)]; }
  std::span<const Part> parts(std::uint32_t first, std::uint32_t count) const {
    return std::span(parts_).subspan(first, count);
  }

private:
  Grammar();
  void name_contexts();
  void fill_slots();

  struct Slot {
    Context under = Context::none;
    const Entry *entry = nullptr;
  };
  const Entry *table_;
  std::vector<Part> parts_;
  std::vector<Opening> openings_;       // beside vocabulary()
  std::vector<std::string_view> names_; // of contexts
  std::vector<Slot> slots_;             // a power of two of them, open addressing
};

// The words of `long|short`, one by one.
template <typename Visit>
void each_choice(std::string_view words, Visit visit) {
  while (!words.empty()) {
    const std::size_t bar = words.find('|');
    visit(words.substr(0, bar));
    words = bar == std::string_view::npos ? std::string_view{} : words.substr(bar + 1);
  }
}

} // namespace bodkin::language
