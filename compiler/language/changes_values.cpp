#include "language/changes.hpp"
#include "language/mended.hpp"

#include <fmt/format.h>

namespace bodkin::language {
namespace {

bool is_number(const Trial &trial, std::size_t i) {
  return i < trial.lexemes.size() && trial.lexemes[i].kind == LexemeKind::number;
}

bool is_bare(const Trial &trial, std::size_t i) {
  return is_number(trial, i) && read_amount(trial.words(i)).bare();
}

bool is_cross(const Trial &trial, std::size_t i) {
  const std::string_view words = trial.words(i);
  return is_number(trial, i + 1) && (words == "by" || words == "X" || words == "*");
}

// From lexeme `from` on: units that stand apart touch their numbers, sides are parted by x, and
// numbers without a unit have `unit`.
std::string measured(const Trial &trial, std::size_t from, std::string_view unit) {
  std::string line = trial.line.substr(0, trial.lexemes[from].begin);
  for (std::size_t i = from; i < trial.lexemes.size(); ++i) {
    line += is_cross(trial, i) ? std::string_view("x") : trial.words(i);
    const bool last = i + 1 == trial.lexemes.size();
    const bool joins = is_bare(trial, i) && !last && units_in(trial.words(i + 1));
    if (is_bare(trial, i) && !joins && !read_amount(trial.words(i)).zero())
      line += unit;
    if (!last && !joins)
      line += trial.line.substr(trial.lexemes[i].end,
                                trial.lexemes[i + 1].begin - trial.lexemes[i].end);
  }
  return line;
}

std::string_view unit_of_line(const Trial &trial, std::string_view file) {
  for (std::size_t i = 0; i < trial.lexemes.size(); ++i)
    if (is_number(trial, i))
      if (const std::string_view unit = read_amount(trial.words(i)).unit; units_in(unit))
        return unit;
  return unit_of_habit(file);
}

// `40mmx40mm` with room on both sides of the x; a side without a unit has the other's.
std::string apart(const Trial &trial) {
  const std::size_t at = trial.failure.at;
  const std::string_view words = trial.words(at);
  const std::string_view own = *before_the_x(read_amount(words).unit);
  const std::string_view other = read_amount(trial.words(at + 1)).unit;
  return fmt::format("{}{}{} x {}", trial.line.substr(0, trial.lexemes[at].begin),
                     words.substr(0, words.size() - 1), own.empty() ? other : "",
                     trial.line.substr(trial.lexemes[at + 1].begin));
}

// Four lengths in a row are a point and a size, whatever signs stand between them.
std::string point_and_size(const Trial &trial) {
  std::vector<std::string_view> numbers;
  for (std::size_t i = 1; i < trial.lexemes.size(); ++i)
    if (is_number(trial, i))
      numbers.push_back(trial.words(i));
    else if (trial.lexemes[i].kind != LexemeKind::comma && trial.words(i).size() > 2)
      return {};
  if (numbers.size() != 4)
    return {};
  return fmt::format("{}{} {}, {} x {}", trial.line.substr(0, trial.lexemes[1].begin), numbers[0],
                     numbers[1], numbers[2], numbers[3]);
}

// `5p` is five hundredths, and so are `5c` and `5¢`.
std::string from_pence(std::string_view words, std::string_view sign) {
  const Amount amount = read_amount(words);
  const bool small = amount.unit == "p" || amount.unit == "c" || amount.unit == "\u00a2";
  if (!small || !amount.whole() || amount.digits >= 100'000)
    return {};
  return fmt::format("{}{}.{:02}", sign, amount.digits / 100, amount.digits % 100);
}

} // namespace

std::optional<std::string_view> before_the_x(std::string_view unit) {
  if (!unit.ends_with('x'))
    return {};
  unit.remove_suffix(1);
  return unit.empty() || units_in(unit) ? std::optional(unit) : std::nullopt;
}

void change_measures(const Trial &trial, std::string_view file, std::vector<std::string> &lines) {
  if (!trial.wants({ValueKind::length, ValueKind::size, ValueKind::across, ValueKind::down,
                    ValueKind::place, ValueKind::spot}))
    return;
  if (trial.wants({ValueKind::place}))
    if (std::string line = point_and_size(trial); !line.empty())
      lines.push_back(std::move(line));
  if (is_number(trial, trial.failure.at) && is_number(trial, trial.failure.at + 1U))
    if (before_the_x(read_amount(trial.words(trial.failure.at)).unit))
      lines.push_back(apart(trial));
  lines.push_back(measured(trial, trial.failure.at, {}));
  lines.push_back(measured(trial, trial.failure.at, unit_of_line(trial, file)));
}

void change_money(const Trial &trial, std::string_view file, std::vector<std::string> &lines) {
  const std::size_t at = trial.failure.at;
  if (!is_number(trial, at) ||
      !trial.wants({ValueKind::money, ValueKind::rate, ValueKind::copyrate}))
    return;
  if (at + 1U < trial.lexemes.size())
    if (const std::string_view sign = sign_of_money(trial.words(at + 1U)); !sign.empty()) {
      const std::string before = fmt::format("{}{}", sign, trial.words(at));
      lines.push_back(trial.line.substr(0, trial.lexemes[at].begin) + before +
                      trial.line.substr(trial.lexemes[at + 1U].end));
      return;
    }
  const std::string_view sign = money_of_habit(file);
  if (const std::string pence = from_pence(trial.words(at), sign); !pence.empty())
    lines.push_back(trial.with(at, pence));
  if (is_bare(trial, at))
    lines.push_back(trial.with(at, fmt::format("{}{}", sign, trial.words(at))));
}

void change_type_size(const Trial &trial, std::vector<std::string> &lines) {
  const std::size_t at = trial.failure.at;
  if (!trial.wants({ValueKind::typesize}) || !is_number(trial, at))
    return;
  const Amount amount = read_amount(trial.words(at));
  if (amount.unit == "pt")
    lines.push_back(trial.with(at, trial.words(at).substr(0, trial.words(at).size() - 2)));
}

} // namespace bodkin::language
