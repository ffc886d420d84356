#include "press/leaflet_figures.hpp"
#include "press/leaflet_slices.hpp"

#include <algorithm>
#include <numeric>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double column_gap = 14, row_room = 3, line_width = 0.4;

double foot_of(const std::vector<Line> &lines) {
  return lines.empty() ? 0 : lines.back().foot.in_points();
}

double right_of(const std::vector<Line> &lines) {
  double right = 0;
  for (const Line &line : lines)
    right = std::max(right, line.right.in_points());
  return right;
}

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
  double line = line_width;
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
  const double height = high + 2 * row_room;
  return {0, height, false, false,
          [cells = std::move(cells), at = std::move(at), height, width = look.line,
           left = columns.lefts[look.ruled_from], right](LeafletPage &page, double y) {
            for (std::size_t i = 0; i < cells.size(); ++i)
              if (!cells[i].empty())
                page.words.push_back(words_at(cells[i], at[i], y + row_room));
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
  return look;
}

// How pictures of one block stand: in rows, all in one scale.
struct Row {
  std::vector<const Shown *> shown;
  double width = 0;
};

// What pictures of one block are set by.
struct RowsSet {
  const Pictures &pictures;
  double room, gap;
  LeafletType &type;
  double share_of_height = 1;
  double scale = 1;

  // Where a row holds so many: an even share of it each.
  double share() const {
    const auto across = static_cast<double>(pictures.across);
    return (room - gap * (across - 1)) / across;
  }

  bool narrow() const { return room < 300; }

  // A narrow picture has room below it for what is said of it; one alone has all there is.
  double slot(const Shown &shown) const {
    const double narrowest_caption = narrow() ? 76 : 120;
    if (pictures.shown.size() == 1)
      return room;
    if (pictures.across > 0)
      return share();
    const PictureRoom need = room_of(shown, scale);
    return std::max(
        need.left + need.width + need.right,
        std::min(narrowest_caption, type.width(shown.caption, LeafletRole::caption) + 1));
  }

  bool full(const Row &row, double width) const {
    if (pictures.across > 0)
      return row.shown.size() == pictures.across;
    return !row.shown.empty() && row.width + gap + width > room + 0.01;
  }

  std::vector<Row> rows() const {
    std::vector<Row> rows;
    for (const Shown &shown : pictures.shown) {
      const double width = slot(shown);
      if (rows.empty() || full(rows.back(), width))
        rows.emplace_back();
      rows.back().width += (rows.back().shown.empty() ? 0 : gap) + width;
      rows.back().shown.push_back(&shown);
    }
    return rows;
  }

  // The largest at which none is higher than asked or wider than its room.
  double largest() const {
    double most = 1;
    const double wide = pictures.across > 0 ? share() : room;
    for (const Shown &shown : pictures.shown) {
      const PictureRoom real = room_of(shown, 1);
      most = std::min({most, share_of_height * pictures.most_height.in_points() / real.height,
                       (wide - real.left - real.right) / real.width});
    }
    return most;
  }

  // A little smaller where that saves a row.
  double suited() {
    constexpr double step = 0.97;
    const double least = narrow() ? 0.55 : 0.7;
    const double most = scale = largest();
    const std::size_t rows_at_most = rows().size();
    if (rows_at_most == 1)
      return most;
    while (scale > most * least) {
      scale *= step;
      if (rows().size() < rows_at_most)
        return scale;
    }
    return scale = most;
  }
};

// One picture alone has its words beside it, where there is room.
Slice picture_alone(const Shown &shown, double scale, double left, double measure,
                    LeafletType &type) {
  constexpr double gap = 22;
  const PictureRoom need = room_of(shown, scale);
  const double beside = left + need.left + need.width + need.right + gap;
  std::vector<Line> lines = type.broken({}, shown.caption, LeafletRole::caption, measure);
  const double height =
      std::max(need.above + need.height + need.below, need.above + foot_of(lines));
  return {
      12, height, false, false,
      [&shown, scale, left, need, beside, lines = std::move(lines)](LeafletPage &page, double y) {
        page.pictures.push_back({&shown, left + need.left, y + need.above, scale});
        page.words.push_back(words_at(lines, beside, y + need.above));
      }};
}

Slice picture_row(const Row &row, const RowsSet &set, double left) {
  constexpr double above_caption = 5;
  const double scale = set.scale;
  std::vector<PlacedPicture> placed;
  std::vector<Item> captions;
  double above = 0, below = 0, frame = 0, high = 0;
  for (const Shown *shown : row.shown) {
    const PictureRoom need = room_of(*shown, scale);
    above = std::max(above, need.above);
    frame = std::max(frame, need.height);
    below = std::max(below, need.below);
  }
  const double captions_at = above + frame + below + above_caption;
  for (const Shown *shown : row.shown) {
    const PictureRoom need = room_of(*shown, scale);
    placed.push_back({shown, left + need.left, above, scale});
    if (!shown->caption.empty()) {
      std::vector<Line> lines =
          set.type.broken({}, shown->caption, LeafletRole::caption, set.slot(*shown));
      high = std::max(high, foot_of(lines));
      captions.push_back(words_at(std::move(lines), left, captions_at));
    }
    left += set.slot(*shown) + set.gap;
  }
  return {
      12, captions_at + high, false, false,
      [placed = std::move(placed), captions = std::move(captions)](LeafletPage &page, double y) {
        for (PlacedPicture picture : placed) {
          picture.y += y;
          page.pictures.push_back(picture);
        }
        for (Item item : captions) {
          item.place.y += Length::nearest_points(y);
          page.words.push_back(std::move(item));
        }
      }};
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
  // A short table is never parted.
  constexpr std::size_t short_enough = 12;
  if (slices.size() <= short_enough)
    for (std::size_t i = 0; i + 1 < slices.size(); ++i)
      slices[i].keep = true;
  return slices;
}

std::vector<Slice> picture_slices(const Pictures &pictures, double left, double right,
                                  LeafletType &type, double share) {
  std::vector<Slice> slices;
  if (pictures.shown.empty())
    return slices;
  const double gap = pictures.across > 2 || right - left < 300 ? 14 : 26;
  RowsSet set{pictures, right - left, gap, type, share};
  const double scale = set.suited();
  const std::vector<Row> rows = set.rows();
  constexpr double narrowest = 130, widest = 230;
  const PictureRoom first = room_of(*rows.front().shown.front(), scale);
  const double beside = set.room - (first.left + first.width + first.right) - gap;
  for (const Row &row : rows)
    slices.push_back(
        rows.size() == 1 && row.shown.size() == 1 && beside >= narrowest
            ? picture_alone(*row.shown.front(), scale, left, std::min(beside, widest), type)
            : picture_row(row, set, left));
  return slices;
}

} // namespace bodkin::press
