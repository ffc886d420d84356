#include "language/look.hpp"
#include "language/mended.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

// What a date begins with that holds: the year, or year and month.
struct SoFar {
  std::string_view year, month, day;
};

bool is_number(std::string_view words, std::size_t digits) {
  return words.size() == digits && std::all_of(words.begin(), words.end(), is_digit);
}

std::optional<SoFar> parted(std::string_view words) {
  SoFar date{words.substr(0, 4), words.size() > 5 ? words.substr(5, 2) : std::string_view(),
             words.size() > 8 ? words.substr(8) : std::string_view()};
  const bool right = is_number(date.year, 4) && words.size() > 5 && words[4] == '-' &&
                     is_number(date.month, 2) &&
                     (words.size() == 7 || (words[7] == '-' && is_number(date.day, 2)));
  return right ? std::optional(date) : std::nullopt;
}

constexpr std::array<std::string_view, 12> months{"jan", "feb", "mar", "apr", "may", "jun",
                                                  "jul", "aug", "sep", "oct", "nov", "dec"};

// 1 to 12 by its first three letters; 0: no month.
std::size_t month_named(std::string_view word) {
  const std::string small = small_letters(word);
  const auto found = std::find(months.begin(), months.end(), small.substr(0, 3));
  return small.size() < 3 || found == months.end()
             ? 0
             : static_cast<std::size_t>(found - months.begin()) + 1;
}

// A day, a month and a year in the order that people write them in.
struct Dated {
  std::size_t month = 0, last = 0; // the lexeme that ends it
  std::string_view day, year;
  bool whole() const { return month > 0 && !year.empty(); }
};

Dated dated_in_words(const Look &look) {
  Dated date;
  for (std::size_t i = look.at; i < look.line.lexemes.size() && i < look.at + 4U; ++i) {
    const std::string_view words = look.line.words(i);
    if (look.line.lexemes[i].kind == LexemeKind::comma)
      continue;
    if (const std::size_t month = month_named(words); month > 0 && date.month == 0)
      date.month = month;
    else if (is_number(words, 4) && date.year.empty())
      date.year = words;
    else if ((is_number(words, 1) || is_number(words, 2)) && date.day.empty())
      date.day = words;
    else
      break;
    date.last = i;
    if (date.whole())
      break;
  }
  return date;
}

struct Land {
  std::string_view written, code;
};
// ISO 3166-1: codes of three letters, and names that people type (from memory).
constexpr std::array<Land, 26> lands{
    {{"usa", "US"},       {"america", "US"}, {"uk", "GB"},          {"gbr", "GB"},
     {"britain", "GB"},   {"england", "GB"}, {"scotland", "GB"},    {"wales", "GB"},
     {"ireland", "IE"},   {"irl", "IE"},     {"canada", "CA"},      {"can", "CA"},
     {"australia", "AU"}, {"aus", "AU"},     {"germany", "DE"},     {"deu", "DE"},
     {"france", "FR"},    {"fra", "FR"},     {"italy", "IT"},       {"ita", "IT"},
     {"spain", "ES"},     {"esp", "ES"},     {"netherlands", "NL"}, {"nld", "NL"},
     {"japan", "JP"},     {"jpn", "JP"}}};

std::string code_of(std::string_view written) {
  const std::string small = small_letters(written);
  for (const Land &land : lands)
    if (small == land.written)
      return std::string(land.code);
  if (small.size() != 2 || small.find_first_not_of("abcdefghijklmnopqrstuvwxyz") != small.npos)
    return {};
  std::string code = small;
  for (char &c : code)
    c = static_cast<char>(c - 'a' + 'A');
  return code;
}

} // namespace

// `2026-02-30`, `2026-13`
Slip no_such_day(const Look &look) {
  if (!look.wanted({ValueKind::date}))
    return {};
  const std::string_view words = look.line.words(look.at);
  const auto date = parted(words);
  if (!date)
    return {};
  const bool month = date->month >= "01" && date->month <= "12";
  const std::string kept =
      month ? fmt::format("{}-{}", date->year, date->month) : std::string(date->year);
  if (!can_be_read(look.line.with(look.at, kept), look.entry))
    return {};
  return instead(slip(look, "unknown-kind",
                      month ? fmt::format("no calendar has the day {}", words)
                            : fmt::format("no year has the month {}", date->month),
                      fmt::format("dates are year, month and day; what is not known may be left "
                                  "out: {}",
                                  kept)),
                 look, look.at, look.at, kept);
}

// `dated November 2026`, `permission 3 May 2026`, `dated May 3, 2026`
Slip month_in_words(const Look &look) {
  if (!look.wanted({ValueKind::date}))
    return {};
  const Dated date = dated_in_words(look);
  if (!date.whole())
    return {};
  std::string written = fmt::format("{}-{:02}", date.year, date.month);
  if (!date.day.empty())
    written += fmt::format("-{:0>2}", date.day);
  return instead(slip(look, "unknown-kind",
                      fmt::format("a date is written in figures: {}", written),
                      "year, month and day stand in one order, so that nobody takes one for "
                      "another"),
                 look, look.at, date.last, written);
}

// `published 1920, USA`
Slip country_by_name(const Look &look) {
  if (!look.wanted({ValueKind::country}))
    return {};
  const std::string code = code_of(look.line.words(look.at));
  Problem problem =
      slip(look, "unknown-kind",
           fmt::format("a country is its two capitals{}: {} is no code",
                       code.empty() ? " (US, GB, FR)" : ", as " + code, look.line.found(look.at)),
           "the codes are those of ISO 3166; a law whose terms hang on the country looks for them");
  if (code.empty() || !can_be_read(look.line.with(look.at, code), look.entry))
    return problem;
  return instead(std::move(problem), look, look.at, look.at, code);
}

} // namespace bodkin::language
