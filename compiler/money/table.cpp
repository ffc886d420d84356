#include "money/table.hpp"

#include "problems/characters.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr int indent = 2, gap = 2;
constexpr std::string_view times = " × ", equals = " = ";

std::string spaces(int count) {
  return std::string(static_cast<std::size_t>(std::max(count, 0)), ' ');
}
std::string left(std::string_view text, int width) {
  return std::string(text) + spaces(width - columns_of(text));
}
std::string right(std::string_view text, int width) {
  return spaces(width - columns_of(text)) + std::string(text);
}

int widest(const std::vector<FigureRow> &rows, std::string FigureRow::*column) {
  int width = 0;
  for (const FigureRow &row : rows)
    width = std::max(width, columns_of(row.*column));
  return width;
}

} // namespace

std::vector<std::string> set_in_columns(const std::vector<FigureRow> &rows) {
  const int quantity = widest(rows, &FigureRow::quantity), rate = widest(rows, &FigureRow::rate),
            total = widest(rows, &FigureRow::total), from = widest(rows, &FigureRow::from);
  const int figures = quantity + columns_of(times) + rate + columns_of(equals) + total;
  const int wide = widest(rows, &FigureRow::what);
  const bool places_below = indent + wide + gap + figures + gap + from > estimate_columns;
  const int what = std::min(wide, std::max(estimate_columns - indent - gap - figures, 0));
  std::vector<std::string> lines;
  for (const FigureRow &row : rows) {
    const bool fits = columns_of(row.what) <= what;
    if (!fits)
      lines.push_back(spaces(indent) + row.what);
    std::string line = spaces(indent) + left(fits ? row.what : "", what) + spaces(gap) +
                       right(row.quantity, quantity) + std::string(times) + right(row.rate, rate) +
                       std::string(equals) + right(row.total, total);
    if (!places_below && !row.from.empty())
      line += spaces(gap) + row.from;
    lines.push_back(std::move(line));
    if (places_below && !row.from.empty())
      lines.push_back(spaces(2 * indent) + row.from);
  }
  return lines;
}

std::string with_leader(std::string_view name, std::string_view amount) {
  const int room = estimate_columns - indent - columns_of(name) - columns_of(amount);
  const std::string dots(static_cast<std::size_t>(std::max(room - 2, 1)), '.');
  return spaces(indent) + std::string(name) + " " + dots + " " + std::string(amount);
}

} // namespace bodkin
