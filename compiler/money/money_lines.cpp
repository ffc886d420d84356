#include "money/money_lines.hpp"

#include "money/changed_lines.hpp"

#include <array>
#include <string_view>

namespace bodkin {
namespace {

constexpr std::string_view number_characters = "0123456789.,";

struct Found {
  std::size_t begin = std::string_view::npos, end = std::string_view::npos;
};

// "$14.20" and its like.
Found signed_amount(std::string_view line, std::size_t from) {
  Found found;
  for (const std::string_view sign : std::array<std::string_view, 3>{"$", "£", "€"}) {
    const std::size_t begin = line.find(sign, from);
    if (begin >= found.begin)
      continue;
    std::size_t end = line.find_first_not_of(number_characters, begin + sign.size());
    if (end == std::string_view::npos)
      end = line.size();
    if (line[end - 1] == ',')
      --end;
    found = {begin, end};
  }
  return found;
}

constexpr bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

// "12.50 CAD".
Found coded_amount(std::string_view line, std::size_t from) {
  for (std::size_t i = from; i + 4 <= line.size(); ++i) {
    const bool code = line[i] == ' ' && is_capital(line[i + 1]) && is_capital(line[i + 2]) &&
                      is_capital(line[i + 3]) && (i + 4 == line.size() || line[i + 4] == ' ');
    if (!code || i == 0 || number_characters.find(line[i - 1]) == std::string_view::npos)
      continue;
    const std::size_t before = line.find_last_not_of(number_characters, i - 1);
    return {before == std::string_view::npos ? 0 : before + 1, i + 4};
  }
  return {};
}

// "£5" for "$5", "5 CAD" for "£5".
std::string in_other_money(std::string_view amount, Currency currency) {
  const std::size_t first = amount.find_first_of("0123456789");
  std::string digits(amount.substr(first, amount.find_last_of("0123456789") + 1 - first));
  std::string text = written(Decimal{}, currency);
  return text.replace(text.find("0.00"), 4, digits);
}

} // namespace

std::string money_sign(Currency currency) {
  std::string text = written(Decimal{}, currency);
  text.erase(text.find("0.00"), 4);
  if (text.starts_with(' '))
    text.erase(0, 1);
  return text;
}

std::string money_to_fill_in(Currency currency) {
  std::string text = written(Decimal{}, currency);
  return text.replace(text.find("0.00"), 4, "…");
}

std::string first_word(const Sources &sources, Range range) {
  const std::string line = bare_line(sources, line_of(sources, range));
  return line.substr(0, line.find_first_of(" \t"));
}

std::string with_money_in(const Sources &sources, Range range, Currency currency) {
  std::string line = bare_line(sources, line_of(sources, range));
  const Found by_sign = signed_amount(line, 0);
  const Found by_code = coded_amount(line, 0);
  const Found found = by_code.begin < by_sign.begin ? by_code : by_sign;
  if (found.begin != std::string::npos)
    line.replace(found.begin, found.end - found.begin,
                 in_other_money(line.substr(found.begin, found.end - found.begin), currency));
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
