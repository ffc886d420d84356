// Pictures of a leaflet in rows, with what is said of them below or beside them.
#include "press/leaflet_figures.hpp"
#include "press/leaflet_slices.hpp"
#include "press/set_lines.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

using namespace paperwork;

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
    // Small, a line may have its measure beside it, which takes more room.
    constexpr double step = 0.97, least = 0.05;
    while (most > least &&
           std::any_of(pictures.shown.begin(), pictures.shown.end(), [&](const Shown &shown) {
             const PictureRoom need = room_of(shown, most);
             return need.left + need.width + need.right > wide + 0.01;
           }))
      most *= step;
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
  constexpr double above_caption = 5, widest_caption = 300;
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
      std::vector<Line> lines = set.type.broken(
          {}, shown->caption, LeafletRole::caption,
          row.shown.size() == 1 ? std::min(set.room, widest_caption) : set.slot(*shown));
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
