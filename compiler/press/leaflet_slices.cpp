#include "press/leaflet_slices.hpp"
#include "press/set_lines.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double head_below = 3; // a step's headline

// Wider lines are hard to find back from.
constexpr double widest_measure = 420;

Slice words(std::vector<Line> lines, double x, double before, bool keep = false) {
  const double height = foot_of(lines);
  return {before, height, keep, false, [lines = std::move(lines), x](LeafletPage &page, double y) {
            page.words.push_back(words_at(lines, x, y));
          }};
}

struct Cutter {
  Band band;
  LeafletType &type;
  double left() const { return band.left + band.hanging; }
  double measure() const { return std::min(band.right - left(), widest_measure); }

  std::vector<Slice> operator()(const Headline &head) const {
    const LeafletRole role = head.level == 1   ? LeafletRole::head
                             : head.level == 2 ? LeafletRole::subhead
                                               : LeafletRole::minor;
    const double before = head.level == 1 ? 18 : head.level == 2 ? 14 : 10;
    std::vector<Line> lines = type.broken({}, head.text, role, band.right - left());
    Slice slice =
        head.level > 1 ? words(lines, left(), before, true) : step_head(lines, head.number, before);
    if (!head.count.empty())
      add_count(head, lines, slice);
    return {slice};
  }

  // How many, at the right end of the headline, or below it where there is no room.
  void add_count(const Headline &head, const std::vector<Line> &lines, Slice &slice) const {
    constexpr double gap = 18, up = 3;
    const LeafletRole role = LeafletRole::column;
    const double wide = type.width(head.count, role);
    const double last = lines.empty() ? 0 : lines.back().right.in_points();
    const double inset = head.level > 1 ? 0 : head_below;
    const bool beside = left() + last + gap + wide <= band.right;
    if (!beside)
      slice.height += type.leading(role);
    const double at = slice.height - inset - up - type.leading(role) + (beside ? 0 : up);
    slice.put = [put = std::move(slice.put), line = type.line(head.count, role), at,
                 x = beside ? band.right - wide : left()](LeafletPage &page, double y) {
      put(page, y);
      page.words.push_back(words_at({line}, x, y + at));
    };
  }

  // A line across the page, the step's number hanging at its left.
  Slice step_head(std::vector<Line> lines, const std::string &number, double before) const {
    constexpr double above = 9;
    const double height = above + foot_of(lines) + head_below;
    std::vector<Line> figure;
    if (!number.empty())
      figure.push_back(type.line(number, LeafletRole::number));
    const double up = type.leading(LeafletRole::number) - type.leading(LeafletRole::head);
    return {before, height, true, false,
            [lines = std::move(lines), figure = std::move(figure), up, band = band,
             x = left()](LeafletPage &page, double y) {
              page.rules.push_back({band.left, y, band.right, y, 1});
              page.words.push_back(words_at(lines, x, y + above));
              if (!figure.empty())
                page.words.push_back(words_at(figure, band.left, y + above - up * 0.55));
            }};
  }

  std::vector<Slice> operator()(const Passage &passage) const {
    return {words(type.broken(passage.lead, passage.text,
                              passage.small ? LeafletRole::small : LeafletRole::text, measure()),
                  left(), passage.small ? 3 : 5)};
  }

  std::vector<Slice> operator()(const Care &care) const {
    constexpr double inset = 12, room = 2;
    std::vector<Line> lines =
        type.broken("Take care.", care.text, LeafletRole::care, measure() - inset);
    const double height = foot_of(lines) + 2 * room;
    return {{9, height, false, false,
             [lines = std::move(lines), x = left(), height](LeafletPage &page, double y) {
               page.rules.push_back({x + 1.5, y, x + 1.5, y + height, 3});
               page.words.push_back(words_at(lines, x + inset, y + room));
             }}};
  }

  std::vector<Slice> operator()(const Table &table) const {
    return table_slices(table, left(), band.right, type);
  }
  std::vector<Slice> operator()(const Pictures &pictures) const {
    return picture_slices(pictures, left(), band.right, type);
  }

  // In two columns, each with a line to write on.
  std::vector<Slice> operator()(const Ticks &ticks) const {
    constexpr std::size_t across = 2;
    constexpr double high = 21;
    std::vector<Slice> slices;
    for (std::size_t first = 0; first < ticks.labels.size(); first += across) {
      std::vector<Line> row;
      for (std::size_t i = first; i < std::min(first + across, ticks.labels.size()); ++i)
        row.push_back(type.line(ticks.labels[i], LeafletRole::small));
      slices.push_back({first == 0 ? 8.0 : 0.0, high, false, false,
                        [row = std::move(row), x = left(), right = band.right](
                            LeafletPage &page, double y) { tick_row(page, row, x, right, y); }});
    }
    return slices;
  }

  static void tick_row(LeafletPage &page, const std::vector<Line> &row, double left, double right,
                       double y) {
    constexpr double side = 11, gap = 24, line_from = 40, line_at = 15;
    const double wide = (right - left - gap) / 2;
    for (std::size_t i = 0; i < row.size(); ++i) {
      const double at = left + (wide + gap) * static_cast<double>(i);
      page.boxes.push_back({at, y + 2, side});
      page.words.push_back(words_at({row[i]}, at + side + 5, y + 1));
      page.rules.push_back({at + line_from, y + line_at, at + wide, y + line_at, 0.4});
    }
  }

  // Two columns of them, read line by line.
  std::vector<Slice> operator()(const Checklist &list) const {
    constexpr double gap = 24, side = 9, inset = 17, room = 3;
    const double wide = (band.right - left() - gap) / 2;
    std::vector<Slice> slices;
    for (std::size_t first = 0; first < list.items.size(); first += 2) {
      std::vector<std::vector<Line>> row;
      double high = 0;
      for (std::size_t i = first; i < std::min(first + 2, list.items.size()); ++i) {
        row.push_back(type.broken({}, list.items[i], LeafletRole::cell, wide - inset));
        high = std::max(high, foot_of(row.back()));
      }
      slices.push_back(
          {first == 0 ? 6.0 : 0.0, high + room, true, false,
           [row = std::move(row), x = left(), step = wide + gap](LeafletPage &page, double y) {
             for (std::size_t i = 0; i < row.size(); ++i) {
               const double at = x + step * static_cast<double>(i);
               page.boxes.push_back({at, y + 2.5, side});
               page.words.push_back(words_at(row[i], at + inset, y));
             }
           }});
    }
    // A long list may be parted, but for its ends.
    for (std::size_t i = 1; i + 2 < slices.size(); ++i)
      slices[i].keep = false;
    if (!slices.empty())
      slices.back().keep = false;
    return slices;
  }

  std::vector<Slice> operator()(const NewPage &) const {
    Slice slice;
    slice.new_page = true;
    return {slice};
  }
};

} // namespace

std::vector<Slice> slices_of(const LeafletBlock &block, const Band &band, LeafletType &type) {
  return std::visit(Cutter{band, type}, block);
}

std::vector<Slice> title_slices(const Leaflet &leaflet, const Band &band, LeafletType &type) {
  std::vector<Slice> slices;
  const double measure = band.right - band.left;
  slices.push_back(
      words(type.broken({}, leaflet.title, LeafletRole::title, measure), band.left, 0, true));
  slices.push_back(
      words(type.broken({}, leaflet.kind, LeafletRole::kind, measure), band.left, 2, true));
  if (!leaflet.aside.empty())
    slices.push_back(
        words(type.broken({}, leaflet.aside, LeafletRole::aside, measure), band.left, 2, true));
  slices.back().keep = false;
  return slices;
}

} // namespace bodkin::press
