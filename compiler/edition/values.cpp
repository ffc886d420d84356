#include "edition/values.hpp"

#include "edition/currency.hpp"
#include "edition/problems.hpp"
#include "language/mended.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem unknown_colour(Reader &reader, FactLine line, std::string_view part,
                       std::string_view name) {
  std::vector<std::string_view> names{"black", "white"};
  for (const std::string_view stock : reader.things(Family::stock).names())
    names.push_back(stock);
  Problem problem{.check = "unknown-name",
                  .range = line.range(part),
                  .message = fmt::format("no colour here is called {}", name),
                  .why = fmt::format("colours by name are {}; any other is written as #rrggbb",
                                     list_of(names))};
  if (const auto near = reader.near(name, names)) {
    problem.message += fmt::format("; did you mean {}?", *near);
    problem.type.push_back({typed(reader, line.range(), line.range(part), *near), {}});
    problem.edits.push_back({line.range(part), std::string(*near)});
  } else {
    problem.type.push_back({typed(reader, line.range(), line.range(part), "#c8102e"), "for a red"});
  }
  return problem;
}

} // namespace

std::optional<std::uint32_t> index_of(Reader &reader, Family family, FactLine line,
                                      std::string_view part) {
  if (!line || !line.has(part))
    return std::nullopt;
  const Things &things = reader.things(family);
  const auto found = things.by_name.find(line.words(part));
  if (found == things.by_name.end()) {
    if (reader.first_said_at(line.range(part)))
      reader.report(unknown_name(reader, family, line, part));
    return std::nullopt;
  }
  things.all[found->second].used = true;
  return found->second;
}

std::optional<Known<std::string>> text_in(FactLine line, std::string_view part) {
  if (!line || !line.has(part))
    return std::nullopt;
  return known(std::string(line.words(part)), line.range(part));
}

std::optional<Known<Mode>> mode_in(FactLine line, std::string_view part) {
  if (!line || !line.has(part))
    return std::nullopt;
  return known(line.words(part) == "black" ? Mode::black : Mode::colour, line.range(part));
}

std::optional<Known<Rate>> rate_in(Reader &reader, FactLine line, std::string_view part) {
  auto rate = value_in<Rate>(line, part);
  if (!rate)
    return std::nullopt;
  const std::string_view written = reader.sources.text(rate->from);
  if (rate->value.price.amount.digits < 0) {
    std::string positive(written);
    positive.erase(std::remove(positive.begin(), positive.end(), '-'), positive.end());
    reader.report(too_small(rate->from, fmt::format("{} is less than nothing", written),
                            "nobody pays you for taking it; what an edition earns is its price",
                            typed(reader, line.range(), rate->from, positive)));
    return std::nullopt;
  }
  rate->value.price.currency = currency_meant(
      rate->value.price.currency, money_in_words(line, written, rate->value.price.currency),
      reader.edition.currency.value);
  return rate;
}

std::optional<Known<Rate>> rate_by(Reader &reader, FactLine line, std::string_view part,
                                   const PricedBy &by) {
  const auto rate = rate_in(reader, line, part);
  if (!rate || std::find(by.pers.begin(), by.pers.end(), rate->value.per) != by.pers.end())
    return rate;
  const bool bare =
      rate->value.per == Per::once && !reader.sources.text(rate->from).ends_with("once");
  if (by.bare && bare)
    return rate;
  const std::string instead = fmt::format("{} {}", written(rate->value.price), by.instead);
  reader.report({.check = "priced-by-what",
                 .range = rate->from,
                 .message = fmt::format("{}, and {}", reader.sources.text(rate->from), by.meaning),
                 .why = "what a price is counted by settles how often it is paid",
                 .type = {{typed(reader, line.range(), rate->from, instead),
                           "with the sum that it comes to"}}});
  return std::nullopt;
}

std::optional<Known<std::int64_t>> count_in(Reader &reader, FactLine line, std::string_view part,
                                            std::int64_t least, std::string_view why) {
  const auto count = value_in<language::Count>(line, part);
  if (!count)
    return std::nullopt;
  if (count->value.value < least) {
    std::string instead = typed(reader, line.range(), count->from, std::to_string(least));
    constexpr std::string_view many = "1 copies";
    if (const std::size_t at = instead.find(many); least == 1 && at != std::string::npos)
      if (std::string one = std::string(instead).replace(at, many.size(), "1 copy");
          language::can_be_read(one, *line.statement->entry))
        instead = std::move(one);
    reader.report(too_small(
        count->from,
        fmt::format("{} is too few; the least is {}", reader.sources.text(count->from), least),
        std::string(why), std::move(instead)));
    return std::nullopt;
  }
  return known(count->value.value, count->from);
}

std::optional<Known<int>> year_in(Reader &reader, FactLine line, std::string_view part) {
  constexpr std::int64_t last = 9'999;
  const auto year = count_in(reader, line, part, 1, "years count from 1");
  if (!year)
    return std::nullopt;
  if (**year > last) {
    const std::string written(reader.sources.text(year->from));
    reader.report({.check = "number-too-big",
                   .range = year->from,
                   .message = fmt::format("{} is no year: years have four digits", written),
                   .why = "terms of rights are reckoned with it",
                   .type = {{{}, "write the true one"}}});
    return std::nullopt;
  }
  return known(static_cast<int>(**year), year->from);
}

std::optional<Known<std::int64_t>> up_in(Reader &reader, FactLine line) {
  if (line && line.has("most"))
    return known(up_most, line.range());
  return count_in(reader, line, "copies", 1, "one at the least is on each sheet");
}

std::optional<Known<Length>> length_in(Reader &reader, FactLine line, std::string_view part,
                                       bool may_be_zero) {
  auto length = value_in<Length>(line, part);
  if (!length)
    return std::nullopt;
  if (length->value < Length{} || (!may_be_zero && length->value == Length{})) {
    reader.report(too_small(length->from,
                            fmt::format("{} is no width that a {} can have",
                                        reader.sources.text(length->from), line.word()),
                            may_be_zero ? "a width of paper is nothing or more"
                                        : "a width of paper is more than nothing",
                            std::string(line.statement->entry->example)));
    return std::nullopt;
  }
  return length;
}

std::optional<Known<Paint>> paint_in(Reader &reader, FactLine line, std::string_view part) {
  const auto colour = value_in<language::ColourName>(line, part);
  if (!colour)
    return std::nullopt;
  const std::string_view name = colour->value.name;
  if (name.empty())
    return known(Paint{colour->value.colour}, colour->from);
  const Things &stocks = reader.things(Family::stock);
  if (const auto found = stocks.by_name.find(name);
      found != stocks.by_name.end() && found->second < reader.edition.stocks.size())
    return known(Paint{*reader.edition.stocks[found->second].tint}, colour->from);
  if (name == "black" || name == "white")
    return known(Paint{name == "black" ? Colour{} : Colour{255, 255, 255}}, colour->from);
  if (reader.first_said_at(colour->from))
    reader.report(unknown_colour(reader, line, part, name));
  return std::nullopt;
}

} // namespace bodkin
