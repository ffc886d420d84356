#include "language/look.hpp"
#include "language/mended.hpp"
#include "measure/limits.hpp"
#include "measure/weight.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::language {

Slip too_big(const Look &look) {
  if (!look.wants(Piece::too_big))
    return {};
  std::string message =
      fmt::format("{} is more than anything here can be", look.line.found(look.at));
  std::string why = fmt::format("a number has at most {} digits, {} of them behind the point",
                                limits::number_digits, limits::number_places);
  if (look.wanted({ValueKind::pages, ValueKind::page})) {
    message = fmt::format("an edition has no page {}; there are at most {}",
                          look.line.found(look.at), limits::pages);
    why = "a book that thick does not fold; most likely two numbers have run together";
  } else if (look.wanted({ValueKind::numbers})) {
    message = fmt::format("{} is more copies than hands can fold; {} is the most",
                          look.line.found(look.at), limits::copies);
    why = "each good copy has one number; most likely two numbers have run together";
  } else if (look.wants_length()) {
    why = fmt::format("paper is at most {}in long", limits::length_inches);
  }
  Problem problem = slip(look, "number-too-big", std::move(message), std::move(why));
  problem.type.push_back(
      {{}, "the number that was meant; a point or a space may be missing in it"});
  return problem;
}

// `2,5cm`: the comma touches digits on both sides.
Slip decimal_comma(const Look &look) {
  for (std::size_t i = look.at; i <= look.at + 1U && i + 1 < look.line.lexemes.size(); ++i) {
    if (i == 0 || look.line.lexemes[i].kind != LexemeKind::comma || !look.line.touches(i - 1) ||
        !look.line.touches(i))
      continue;
    if (!is_digit(look.line.words(i - 1).back()) || !is_digit(look.line.words(i + 1).front()))
      continue;
    const std::string number = fmt::format("{}.{}", look.line.words(i - 1), look.line.words(i + 1));
    return instead(slip(look, "decimal-comma",
                        fmt::format("a number's decimals stand behind a point: {}", number),
                        "a comma parts the pieces of a line, so this reads as two numbers"),
                   look, i - 1, i + 1, number);
  }
  return {};
}

namespace {

std::string unit_in_use(const Look &look) {
  for (std::size_t i = 0; i < look.line.lexemes.size(); ++i)
    if (look.line.lexemes[i].kind == LexemeKind::number)
      if (const std::string_view unit = read_amount(look.line.words(i)).unit; units_in(unit))
        return std::string(unit);
  return std::string(unit_of_habit(look.line.text));
}

std::string length_of(const Part &part) {
  switch (part.kind) {
  case ValueKind::place:
  case ValueKind::across:
  case ValueKind::down:
  case ValueKind::spot:
    return "a place on the page is a length";
  case ValueKind::size:
    return "the side of a sheet or page is a length";
  default:
    return fmt::format("{} is a length", part.name == "width" ? "the width of a line"
                                         : part.name == "all" ? "a margin"
                                                              : part.name);
  }
}

// `3inches`, `5.5inx8.5in`.

Problem odd_unit(const Look &look, std::string_view words, std::string_view unit) {
  Problem problem = slip(look, "no-unit", fmt::format("{} is no unit of length", unit),
                         "in, mm, cm, pt and pc fit here; the unit touches the number");
  struct Long {
    std::string_view begins, unit;
  };
  constexpr std::array<Long, 5> longer{
      {{"inch", "in"}, {"milli", "mm"}, {"centi", "cm"}, {"point", "pt"}, {"pica", "pc"}}};
  for (const Long &one : longer)
    if (unit.starts_with(one.begins))
      return instead(std::move(problem), look, look.at, look.at,
                     fmt::format("{}{}", words.substr(0, words.size() - unit.size()), one.unit));
  return problem;
}

// `1/2`, `1 in` where a length belongs.

} // namespace

Slip length_unit(const Look &look) {
  const Part *part = look.wants_length();
  if (!part || look.kind() != LexemeKind::number)
    return {};
  const std::string_view words = look.line.words(look.at);
  const Amount amount = read_amount(words);
  if (amount.denominator == 0)
    return slip(look, "unknown-kind", "nothing can be parted by 0",
                "a fraction has a number below its line");
  if (units_in(amount.unit))
    return {};
  if (!amount.bare())
    return odd_unit(look, words, amount.unit);
  const std::size_t next = look.at + 1U;
  if (next < look.line.lexemes.size() && units_in(look.line.words(next)))
    return instead(
        slip(look, "no-unit",
             fmt::format("a unit touches its number: {}{}", words, look.line.words(next)),
             "a space parts one thing from the next, so the number stands here without "
             "a unit"),
        look, look.at, next, fmt::format("{}{}", words, look.line.words(next)));
  return instead(slip(look, "no-unit", fmt::format("{} of what? {}", words, length_of(*part)),
                      "in, mm, cm, pt and pc fit here; the unit touches the number"),
                 look, look.at, look.at, fmt::format("{}{}", words, unit_in_use(look)));
}

struct Unit {
  ValueKind kind;
  std::string_view says, first, touching;
};
constexpr std::array<Unit, 7> units{
    {{ValueKind::angle, "a turn is in degrees", "deg", ""},
     {ValueKind::share, "a share of the whole is in hundredths", "%", ""},
     {ValueKind::weight, "paper is weighed in gsm, or in lb with its kind", "gsm", " "},
     {ValueKind::mass, "a mass is in g or oz", "g", " "},
     {ValueKind::time, "a time is in s, min or h", "s", " "},
     {ValueKind::rate, "money carries its sign or its currency", "", "before"},
     {ValueKind::copyrate, "money carries its sign or its currency", "", "before"}}};

// `0.4` of the whole is 40%.
std::string in_hundredths(const Amount &amount) {
  if (amount.negative || amount.fraction || amount.places < 1 || amount.places > 2 ||
      amount.digits < 1 || amount.digits >= (amount.places == 1 ? 10 : 100))
    return {};
  return fmt::format("{}%", amount.places == 1 ? amount.digits * 10 : amount.digits);
}

// "2.00 pounds": the sum with its sign before it, and the rest of the line as it can be read.
Slip money_by_name(const Look &look) {
  const std::size_t next = look.at + 1U;
  const bool priced = look.wanted({ValueKind::money, ValueKind::rate, ValueKind::copyrate});
  if (!priced || next >= look.line.lexemes.size())
    return {};
  const std::string_view sign = sign_of_money(look.line.words(next));
  if (sign.empty())
    return {};
  const std::string money = fmt::format("{}{}", sign, look.line.words(look.at));
  Problem problem =
      instead(slip(look, "no-unit", fmt::format("a sum carries its sign before it: {}", money),
                   "so that a price is known by its first letter; other money is written with its "
                   "code behind it, 12.50 CAD"),
              look, look.at, next, money);
  if (problem.type.empty() || can_be_read(problem.type.front().line, look.entry))
    return problem;
  if (const auto whole = mended(problem.type.front().line, look.entry, look.line.text)) {
    const Range first = look.line.range(0), last = look.line.range(look.line.lexemes.size() - 1);
    problem.edits = {{{first.file, first.begin, last.end}, *whole}};
    problem.type = {{*whole, {}}};
  }
  return problem;
}

Slip other_unit(const Look &look) {
  if (look.kind() != LexemeKind::number)
    return {};
  const std::string_view words = look.line.words(look.at);
  if (!read_amount(words).bare())
    return {};
  if (Slip named = money_by_name(look))
    return named;
  for (const Unit &unit : units)
    if (look.wanted({unit.kind}))
      return instead(slip(look, "no-unit", fmt::format("{} of what? {}", words, unit.says),
                          fmt::format("here belongs {}, as in {}", words_of(unit.kind).called,
                                      look.entry.example)),
                     look, look.at, look.at,
                     unit.kind == ValueKind::share && !in_hundredths(read_amount(words)).empty()
                         ? in_hundredths(read_amount(words))
                     : unit.touching == "before"
                         ? fmt::format("{}{}", money_of_habit(look.line.text), words)
                         : fmt::format("{}{}{}", words, unit.touching, unit.first));
  return {};
}

Slip missing_hash(const Look &look) {
  if (!look.wanted({ValueKind::colour}) || look.kind() == LexemeKind::colour)
    return {};
  // `12ab34` falls into several lexemes.
  const std::string_view rest = look.line.text.substr(look.line.lexemes[look.at].begin);
  const std::string_view digits = rest.substr(0, rest.find_first_not_of("0123456789abcdefABCDEF"));
  if (digits.size() != 6)
    return {};
  std::size_t last = look.at;
  while (last + 1 < look.line.lexemes.size() && look.line.touches(last))
    ++last;
  return instead(slip(look, "missing-hash",
                      fmt::format("a colour by number begins with #: #{}", digits),
                      "without it, this is read as the name of an ink or a stock"),
                 look, look.at, last, fmt::format("#{}", digits));
}

Slip odd_colour(const Look &look) {
  if (!look.wanted({ValueKind::colour}) || look.kind() != LexemeKind::colour)
    return {};
  const std::string_view digits = look.line.words(look.at).substr(1);
  Problem problem = slip(look, "unknown-kind", "a colour has six digits, 0 to 9 and a to f",
                         "two each for red, green and blue, as in #f6a5b8");
  if (digits.size() != 3 || digits.find_first_not_of("0123456789abcdefABCDEF") != digits.npos)
    return problem;
  std::string six = "#";
  for (const char digit : digits)
    six += std::string(2, digit);
  return instead(std::move(problem), look, look.at, look.at, six);
}

namespace {

// The kinds of pound paper, each with what this weight comes to.

Problem bare_pounds(const Typed &line, std::size_t number, std::size_t unit) {
  Problem problem;
  const Amount amount = read_amount(line.words(number));
  const Decimal pounds = decimal_of(amount).value_or(Decimal{});
  problem.check = "bare-pounds";
  problem.range = {line.file, line.range(number).begin, line.range(unit).end};
  problem.message = fmt::format("{} lb of which kind of paper?", written(pounds));
  std::vector<std::string> kinds;
  for (const BasicSize kind : {BasicSize::bond, BasicSize::text, BasicSize::cover,
                               BasicSize::bristol, BasicSize::index, BasicSize::tag})
    kinds.push_back(fmt::format("{} {:.0f}", name_of(kind), grammage(pounds, kind).gsm()));
  problem.why =
      fmt::format("pounds are those of 500 sheets of a basic size, which differs by kind; "
                  "in grams a square metre {} lb is: {}",
                  written(pounds), listed(kinds));
  const std::uint32_t end = line.lexemes[unit].end;
  for (const std::string_view kind : {"bond", "text", "cover"})
    if (std::string typed = line.with(end, end, fmt::format(" {}", kind)); !typed.empty())
      problem.type.push_back({std::move(typed), {}});
  return problem;
}

} // namespace

Slip pounds(const Look &look) {
  if (!look.wants(Piece::pounds))
    return {};
  const std::size_t unit = look.at - 1U;
  const bool touching = look.line.lexemes[unit].kind == LexemeKind::number;
  return bare_pounds(look.line, touching ? unit : unit - 1, unit);
}

} // namespace bodkin::language
