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

struct Columns {
  std::vector<double> lefts, widths;
};

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
  const double room = right - left - column_gap * static_cast<double>(columns.widths.size() - 1);
  while (std::accumulate(columns.widths.begin(), columns.widths.end(), 0.0) > room) {
    const auto widest = std::max_element(columns.widths.begin(), columns.widths.end());
    if (*widest < 24)
      break;
    *widest *= 0.94;
  }
  for (const double width : columns.widths) {
    columns.lefts.push_back(left);
    left += width + column_gap;
  }
  return columns;
}

Slice table_row(const Table &table, const std::vector<std::string> &row, LeafletRole role,
                const Columns &columns, double right, LeafletType &type) {
  std::vector<std::vector<Line>> cells;
  std::vector<double> at;
  double high = type.leading(role);
  for (std::size_t i = 0; i < row.size(); ++i) {
    cells.push_back(type.broken({}, row[i], role, columns.widths[i]));
    high = std::max(high, foot_of(cells.back()));
    const bool to_the_right = i < table.figures.size() && table.figures[i];
    at.push_back(columns.lefts[i] +
                 (to_the_right ? std::max(0.0, columns.widths[i] - type.width(row[i], role)) : 0));
  }
  const double height = high + 2 * row_room;
  return {0, height, false, false,
          [cells = std::move(cells), at = std::move(at), height, left = columns.lefts.front(),
           right](LeafletPage &page, double y) {
            for (std::size_t i = 0; i < cells.size(); ++i)
              if (!cells[i].empty())
                page.words.push_back(words_at(cells[i], at[i], y + row_room));
            page.rules.push_back({left, y + height, right, y + height, line_width});
          }};
}

// How pictures of one block stand: in rows, all in one scale.
struct Row {
  std::vector<const Shown *> shown;
  double width = 0;
};

// A narrow picture has room below it for what is said of it.
double slot_of(const Shown &shown, double scale, LeafletType &type) {
  constexpr double narrowest_caption = 140;
  const PictureRoom need = room_of(shown, scale);
  return std::max(need.left + need.width + need.right,
                  std::min(narrowest_caption, type.width(shown.caption, LeafletRole::caption) + 1));
}

std::vector<Row> rows_of(const Pictures &pictures, double scale, double room, double gap,
                         LeafletType &type) {
  std::vector<Row> rows;
  for (const Shown &shown : pictures.shown) {
    const double width = slot_of(shown, scale, type);
    if (rows.empty() ||
        (!rows.back().shown.empty() && rows.back().width + gap + width > room + 0.01))
      rows.emplace_back();
    rows.back().width += (rows.back().shown.empty() ? 0 : gap) + width;
    rows.back().shown.push_back(&shown);
  }
  return rows;
}

// The largest at which none is higher than asked or wider than the page.
double scale_of(const Pictures &pictures, double room) {
  double scale = 1;
  for (const Shown &shown : pictures.shown) {
    const PictureRoom real = room_of(shown, 1);
    scale = std::min({scale, pictures.most_height.in_points() / real.height,
                      (room - real.left - real.right) / real.width});
  }
  return scale;
}

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

Slice picture_row(const Row &row, double scale, double left, double gap, LeafletType &type) {
  constexpr double above_caption = 5;
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
      const double measure = slot_of(*shown, scale, type);
      std::vector<Line> lines = type.broken({}, shown->caption, LeafletRole::caption, measure);
      high = std::max(high, foot_of(lines));
      captions.push_back(words_at(std::move(lines), left, captions_at));
    }
    left += slot_of(*shown, scale, type) + gap;
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
    slices.push_back(table_row(table, table.heads, LeafletRole::column, columns, end, type));
    slices.back().keep = true;
  }
  for (const auto &row : table.rows)
    slices.push_back(table_row(table, row, LeafletRole::cell, columns, end, type));
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
                                  LeafletType &type) {
  constexpr double gap = 26;
  std::vector<Slice> slices;
  if (pictures.shown.empty())
    return slices;
  const double room = right - left;
  const double scale = scale_of(pictures, room);
  const std::vector<Row> rows = rows_of(pictures, scale, room, gap, type);
  constexpr double narrowest = 130, widest = 230;
  const PictureRoom first = room_of(*rows.front().shown.front(), scale);
  const double beside = room - (first.left + first.width + first.right) - gap;
  for (const Row &row : rows)
    slices.push_back(
        rows.size() == 1 && row.shown.size() == 1 && beside >= narrowest
            ? picture_alone(*row.shown.front(), scale, left, std::min(beside, widest), type)
            : picture_row(row, scale, left, gap, type));
  return slices;
}

} // namespace bodkin::press
