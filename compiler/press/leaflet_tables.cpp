// Tables of a leaflet: columns, rows and the lines between them.
#include "press/leaflet_slices.hpp"
#include "press/set_lines.hpp"

#include <algorithm>
#include <numeric>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double column_gap = 14, row_room = 3, line_width = 0.4;

struct Columns {
  std::vector<double> lefts, widths;
};

// No word is broken, nor the name of a file at its hyphen.
std::vector<double> least_widths(const Table &table, std::size_t columns, LeafletType &type) {
  std::vector<double> least(columns, 24);
  const auto widen = [&](const std::vector<std::string> &row, LeafletRole role) {
    for (std::size_t i = 0; i < row.size(); ++i)
      for (std::size_t begin = 0; begin < row[i].size();) {
        const std::size_t end = std::min(row[i].find(' ', begin), row[i].size());
        least[i] = std::max(
            least[i], type.width(std::string_view(row[i]).substr(begin, end - begin), role) + 0.5);
        begin = end + 1;
      }
  };
  widen(table.heads, LeafletRole::column);
  for (const auto &row : table.rows)
    widen(row, LeafletRole::cell);
  return least;
}

// The widest that can give way does.
void narrow_down(std::vector<double> &widths, const std::vector<double> &least, double room) {
  constexpr double step = 0.97;
  while (std::accumulate(widths.begin(), widths.end(), 0.0) > room) {
    std::size_t widest = widths.size();
    for (std::size_t i = 0; i < widths.size(); ++i)
      if (widths[i] * step >= least[i] && (widest == widths.size() || widths[i] > widths[widest]))
        widest = i;
    if (widest == widths.size())
      return;
    widths[widest] *= step;
  }
}

// As wide as their words; where that is more than there is, the widest ones give way.
Columns columns_of(const Table &table, double left, double right, LeafletType &type) {
  Columns columns;
  const auto widen = [&](const std::vector<std::string> &row, LeafletRole role) {
    columns.widths.resize(std::max(columns.widths.size(), row.size()));
    for (std::size_t i = 0; i < row.size(); ++i)
      columns.widths[i] = std::max(columns.widths[i], type.width(row[i], role) + 0.5);
  };
  widen(table.heads, LeafletRole::column);
  for (const auto &row : table.rows)
    widen(row, LeafletRole::cell);
  if (columns.widths.empty())
    return columns;
  if (table.summed)
    widen(table.rows.back(), LeafletRole::text);
  narrow_down(columns.widths, least_widths(table, columns.widths.size(), type),
              right - left - column_gap * static_cast<double>(columns.widths.size() - 1));
  for (const double width : columns.widths) {
    columns.lefts.push_back(left);
    left += width + column_gap;
  }
  return columns;
}

// The first column of a row that says anything.
std::size_t begins_at(const std::vector<std::string> &row) {
  const auto said =
      std::find_if(row.begin(), row.end(), [](const std::string &cell) { return !cell.empty(); });
  return said == row.end() ? 0 : static_cast<std::size_t>(said - row.begin());
}

struct RowLook {
  LeafletRole role = LeafletRole::cell;
  std::size_t ruled_from = 0; // the column where the line below it begins
  double line = line_width;   // 0: none
  double room = row_room;
};

Slice table_row(const Table &table, const std::vector<std::string> &row, const RowLook &look,
                const Columns &columns, double right, LeafletType &type) {
  std::vector<std::vector<Line>> cells;
  std::vector<double> at;
  double high = type.leading(look.role);
  for (std::size_t i = 0; i < row.size(); ++i) {
    cells.push_back(type.broken({}, row[i], look.role, columns.widths[i]));
    high = std::max(high, foot_of(cells.back()));
    const bool to_the_right = i < table.figures.size() && table.figures[i];
    at.push_back(columns.lefts[i] +
                 (to_the_right ? std::max(0.0, columns.widths[i] - right_of(cells.back())) : 0));
  }
  const double height = high + 2 * look.room;
  return {0, height, false, false,
          [cells = std::move(cells), at = std::move(at), height, width = look.line,
           room = look.room, left = columns.lefts[look.ruled_from],
           right](LeafletPage &page, double y) {
            for (std::size_t i = 0; i < cells.size(); ++i)
              if (!cells[i].empty())
                page.words.push_back(words_at(cells[i], at[i], y + room));
            if (width > 0)
              page.rules.push_back({left, y + height, right, y + height, width});
          }};
}

// A row that begins further right goes on with the one above it.
RowLook look_of_row(const Table &table, std::size_t row) {
  RowLook look;
  const std::size_t last = table.rows.size() - 1;
  if (table.summed && row == last)
    look.role = LeafletRole::text; // bold figures are not the lining ones that columns have
  if (row < last)
    look.ruled_from = begins_at(table.rows[row + 1]);
  if (table.summed && row + 1 == last)
    look.line = 1.4;
  if (table.plain) {
    look.line = 0;
    look.room = 0.8;
  }
  return look;
}

} // namespace

std::vector<Slice> table_slices(const Table &table, double left, double right, LeafletType &type) {
  std::vector<Slice> slices;
  const Columns columns = columns_of(table, left, right, type);
  if (columns.widths.empty())
    return slices;
  const double end = std::min(right, columns.lefts.back() + columns.widths.back());
  if (!table.heads.empty()) {
    slices.push_back(
        table_row(table, table.heads, {.role = LeafletRole::column}, columns, end, type));
    slices.back().keep = true;
  }
  for (std::size_t row = 0; row < table.rows.size(); ++row)
    slices.push_back(
        table_row(table, table.rows[row], look_of_row(table, row), columns, end, type));
  if (slices.empty())
    return slices;
  slices.front().before = 8;
  if (!table.heads.empty()) {
    const auto heads = std::make_shared<const Slice>(slices.front());
    for (std::size_t i = 2; i < slices.size(); ++i) // the first row is never parted from them
      slices[i].heads = heads;
  }
  // A short table is never parted, nor of a long one its ends.
  constexpr std::size_t short_enough = 7, end_rows = 2;
  for (std::size_t i = 0; i + 1 < slices.size(); ++i)
    slices[i].keep =
        slices.size() <= short_enough || i <= end_rows || i + end_rows >= slices.size();
  return slices;
}

} // namespace bodkin::press
