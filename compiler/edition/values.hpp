// Values of phrases as the model holds them: names resolved, money in its currency, with the words
// that they come from.
#pragma once

#include "edition/reader.hpp"

#include <array>
#include <optional>
#include <string>

namespace bodkin {

template <typename T>
Known<T> known(T value, Range from) {
  return {std::move(value), from};
}

// The index of the thing that a part of a phrase names, marked as used; none where the part is not
// written or nothing bears the name, which is reported.
std::optional<std::uint32_t> index_of(Reader &reader, Family family, FactLine line,
                                      std::string_view part);
template <typename Id>
std::optional<Known<Id>> id_in(Reader &reader, Family family, FactLine line,
                               std::string_view part) {
  const auto index = index_of(reader, family, line, part);
  if (!index)
    return std::nullopt;
  return known(static_cast<Id>(*index), line.range(part));
}

// A part as the parser gives it.
template <typename T>
std::optional<Known<T>> value_in(FactLine line, std::string_view part) {
  if (!line)
    return std::nullopt;
  const T *value = line.get<T>(part);
  return value ? std::optional(known(*value, line.range(part))) : std::nullopt;
}
std::optional<Known<std::string>> text_in(FactLine line, std::string_view part);
std::optional<Known<Mode>> mode_in(FactLine line, std::string_view part);
// Money below nothing is reported and left out. `$` means the edition's own currency where that is
// a dollar.
std::optional<Known<Rate>> rate_in(Reader &reader, FactLine line, std::string_view part);
// What a price is counted by where it stands; any other is reported and left out.
struct PricedBy {
  std::array<Per, 4> pers;
  std::string_view meaning; // "a bid is priced a copy, or once"
  std::string_view instead; // "a copy"
  bool bare = false;        // a price with no word behind it means that
};
std::optional<Known<Rate>> rate_by(Reader &reader, FactLine line, std::string_view part,
                                   const PricedBy &by);
// A count under `least` is reported and left out; `why` is the reason.
std::optional<Known<std::int64_t>> count_in(Reader &reader, FactLine line, std::string_view part,
                                            std::int64_t least, std::string_view why);
// A year, or a number of years; one of five digits is a slip of the finger, reported and left out.
std::optional<Known<int>> year_in(Reader &reader, FactLine line, std::string_view part);
// How many lie on a sheet: a number, or `up_most`.
std::optional<Known<std::int64_t>> up_in(Reader &reader, FactLine line);
// A length below nothing, or nothing where there has to be something.
std::optional<Known<Length>> length_in(Reader &reader, FactLine line, std::string_view part,
                                       bool may_be_zero);
// A colour by number, black, white, or a stock's tint.
std::optional<Known<Paint>> paint_in(Reader &reader, FactLine line, std::string_view part);

} // namespace bodkin
