#include "money/money_lines.hpp"

#include "measure/currencies.hpp"
#include "money/changed_lines.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace bodkin {
namespace {

constexpr std::string_view number_characters = "0123456789.,";

constexpr bool is_figure(char c) { return (c >= '0' && c <= '9') || c == '.'; }

struct Found {
  std::size_t begin = std::string_view::npos, end = std::string_view::npos;
};

// "$14.20" and its like: a sign with a figure behind it.
Found signed_amount(std::string_view line, std::size_t from) {
  Found found;
  for (const std::string_view sign : std::array<std::string_view, 3>{"$", "£", "€"})
    for (std::size_t begin = line.find(sign, from); begin < found.begin;
         begin = line.find(sign, begin + 1)) {
      const std::size_t first = begin + sign.size();
      if (first >= line.size() || !is_figure(line[first]))
        continue;
      std::size_t end = std::min(line.find_first_not_of(number_characters, first), line.size());
      if (line[end - 1] == ',')
        --end;
      found = {begin, end};
    }
  return found;
}

// Texts in quotes as blanks: what they hold is no price.
std::string without_texts(std::string line) {
  bool inside = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const bool escaped = inside && line[i] == '\\' && i + 1 < line.size();
    if (line[i] == '"')
      inside = !inside;
    else if (inside)
      line[i] = ' ';
    if (escaped)
      line[++i] = ' ';
  }
  return line;
}

constexpr bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

// "12.50 CAD".
Found coded_amount(std::string_view line, std::size_t from) {
  for (std::size_t i = from; i + 4 <= line.size(); ++i) {
    const bool code = line[i] == ' ' && is_capital(line[i + 1]) && is_capital(line[i + 2]) &&
                      is_capital(line[i + 3]) && (i + 4 == line.size() || line[i + 4] == ' ');
    if (!code || i == 0 || !is_figure(line[i - 1]))
      continue;
    const std::size_t before = line.find_last_not_of(number_characters, i - 1);
    return {before == std::string_view::npos ? 0 : before + 1, i + 4};
  }
  return {};
}

Found next_amount(std::string_view line, std::size_t from) {
  const Found by_sign = signed_amount(line, from), by_code = coded_amount(line, from);
  return by_code.begin < by_sign.begin ? by_code : by_sign;
}

// "£5" for "$5", "5 CAD" for "£5".
std::string in_other_money(std::string_view amount, Currency currency) {
  const std::size_t first = std::min(amount.find_first_of("0123456789."), amount.size());
  std::string digits(amount.substr(first));
  digits.erase(digits.find_last_of("0123456789") + 1);
  std::string text = written(Decimal{}, currency);
  const std::string nothing = written(Decimal{}, minor_digits(currency));
  return text.replace(text.find(nothing), nothing.size(), digits);
}

} // namespace

std::string money_sign(Currency currency) {
  std::string text = written(Decimal{}, currency);
  const std::string nothing = written(Decimal{}, minor_digits(currency));
  text.erase(text.find(nothing), nothing.size());
  if (text.starts_with(' '))
    text.erase(0, 1);
  return text;
}

std::string money_to_fill_in(Currency currency) {
  std::string text = written(Decimal{}, currency);
  const std::string nothing = written(Decimal{}, minor_digits(currency));
  return text.replace(text.find(nothing), nothing.size(), "…");
}

std::string first_word(const Sources &sources, Range range) {
  const std::string line = bare_line(sources, line_of(sources, range));
  return line.substr(0, line.find_first_of(" \t"));
}

std::string with_money_in(const Sources &sources, Range range, Currency currency) {
  std::string line = bare_line(sources, line_of(sources, range));
  const std::string figures = without_texts(line);
  for (Found found = next_amount(figures, 0); found.begin != std::string::npos;
       found = next_amount(figures, found.end)) {
    const std::string amount = line.substr(found.begin, found.end - found.begin);
    const std::string other = in_other_money(amount, currency);
    // What is in that money already is not the one that is meant.
    if (other == amount)
      continue;
    return line.replace(found.begin, found.end - found.begin, other);
  }
  return line;
}

std::string line_with_first_number(const Sources &sources, Range range, std::int64_t number) {
  if (!range.somewhere())
    return {};
  ChangedLines lines(sources);
  lines.first_number(line_of(sources, range), number);
  return lines.text();
}

} // namespace bodkin
