// One slip at one place of a line, for the files that tell slips of numbers and of words apart.
#pragma once

#include "language/slips.hpp"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace bodkin::language {

using Slip = std::optional<Problem>;

struct Look {
  const Typed &line;
  const Entry &entry;
  const Failure &failure;
  std::uint32_t at; // where it failed; there is a lexeme

  LexemeKind kind() const { return line.lexemes[at].kind; }
  bool wants(Piece piece) const {
    for (std::uint32_t i = 0; i < failure.count; ++i)
      if (failure.wanted[i].piece == piece)
        return true;
    return false;
  }
  const Part *wanted(std::initializer_list<ValueKind> kinds) const {
    for (std::uint32_t i = 0; i < failure.count; ++i)
      if (failure.wanted[i].part->part == PartKind::value)
        for (const ValueKind kind : kinds)
          if (failure.wanted[i].part->kind == kind)
            return failure.wanted[i].part;
    return nullptr;
  }
  bool wanted_word(std::string_view word) const {
    for (std::uint32_t i = 0; i < failure.count; ++i)
      if (failure.wanted[i].part->part == PartKind::word && failure.wanted[i].part->words == word)
        return true;
    return false;
  }
  const Part *wants_length() const {
    return wanted({ValueKind::length, ValueKind::size, ValueKind::across, ValueKind::down,
                   ValueKind::place, ValueKind::spot});
  }
};

inline bool is_digit(char c) { return c >= '0' && c <= '9'; }

// slips_values.cpp
Problem slip(const Look &look, std::string check, std::string message, std::string why);
// The line with [begin of i, end of j) typed anew.
Problem instead(Problem problem, const Look &look, std::size_t i, std::size_t j,
                std::string_view words);

// slips_numbers.cpp: numbers, units and colours.
Slip too_big(const Look &look);
Slip decimal_comma(const Look &look);
Slip missing_hash(const Look &look);
Slip odd_colour(const Look &look);
Slip length_unit(const Look &look);
Slip other_unit(const Look &look);
Slip pounds(const Look &look);

// slips_units.cpp: units as people write them elsewhere.
Slip grams(const Look &look);
Slip sides_touch(const Look &look);
Slip spare_in_hundredths(const Look &look);

// slips_places.cpp: days and countries.
Slip no_such_day(const Look &look);
Slip month_in_words(const Look &look);
Slip country_by_name(const Look &look);

// slips_only.cpp: whose copies a line is for, said on the line itself instead of below it.
Slip only_on_the_line(const Look &look);
Slip only_of_several(const Look &look);
Slip run_in_parts(const Look &look);
Slip cover_without_paper(const Look &look);

// slips_order.cpp: the order of parts, and commas between them.
Slip parts_exchanged(const Look &look);
Slip needless_comma(const Look &look);

} // namespace bodkin::language
