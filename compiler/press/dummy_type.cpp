#include "press/dummy_type.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

constexpr double reading_size = 10, reading_leading = 13.5;

// The style of an edition whose size is nearest to that of running text, if its face opens.
std::optional<FaceId> face_for_reading(const Edition &edition, const OpenFaces &faces) {
  std::optional<FaceId> nearest;
  double off = 0;
  for (const Style &style : edition.styles) {
    const double by = std::abs(style.size->in_points() - reading_size);
    if (*style.face == FaceId::none || !faces[*style.face].usable() || (nearest && by >= off))
      continue;
    nearest = *style.face;
    off = by;
  }
  return nearest;
}

// A face whose letters are all as wide as each other, for lines to type: a narrow letter and a wide
// one tell.
bool typewriter(const Edition &edition, const OpenFaces &faces, StyleId style) {
  Compositor compositor(edition, faces);
  const Line narrow = compositor.line("iiii.", style, Range{});
  const Line wide = compositor.line("MMMMM", style, Range{});
  return narrow.right == wide.right;
}

StyleId add_style(Edition &edition, FaceId face, double size, double leading) {
  Style style;
  style.name = "dummy";
  style.face.value = face;
  style.size.value = Length::nearest_points(size);
  style.leading.value = Length::nearest_points(leading);
  style.space_before.value = Length::points(4);
  edition.styles.push_back(style);
  return static_cast<StyleId>(edition.styles.size() - 1);
}

Item item_at(std::vector<Line> lines, Length x, Length y) {
  Item item;
  item.place.x = x;
  item.place.y = y;
  item.what = SetWords{std::move(lines)};
  return item;
}

} // namespace

DummyType::DummyType(const Edition &edition, const OpenFaces &faces)
    : edition_(std::make_unique<Edition>(edition)) {
  const auto face = face_for_reading(edition, faces);
  if (!face)
    return;
  edition_->languages = {Known<std::string>{"en", {}}};
  reading_ = add_style(*edition_, *face, reading_size, reading_leading);
  const StyleId heading = add_style(*edition_, *face, 13, 18);
  edition_->styles[at(reading_)].headings[0] = Known<StyleId>{heading, {}};
  for (std::size_t i = 0; i < edition.styles.size(); ++i) {
    const FaceId other = *edition.styles[i].face;
    if (other != FaceId::none && faces[other].usable() &&
        typewriter(edition, faces, static_cast<StyleId>(i))) {
      const StyleId typed = add_style(*edition_, other, 9, reading_leading);
      edition_->styles[at(reading_)].code = Known<StyleId>{typed, {}};
      break;
    }
  }
  for (const double size : {3.0, 4.0, 5.0, 6.0, 7.0, 8.0})
    tried_.push_back(add_style(*edition_, *face, size, size * 1.35));
  compositor_.emplace(*edition_, faces);
}

std::vector<Item> DummyType::smallest() const {
  std::vector<Item> items;
  Length y;
  for (const StyleId style : tried_) {
    const double size = edition_->styles[at(style)].size->in_points();
    Line line = compositor_->line(fmt::format("{:.0f} points: rain at 6.30, 7.15, 8.45", size),
                                  style, Range{});
    const Length high = line.foot - line.top;
    items.push_back(item_at({std::move(line)}, {}, y));
    y += high;
  }
  return items;
}

// How high columns are that share a flow evenly, with a few lines to spare for where it breaks.
Length DummyType::height_in(Flow &flow, Length measure, int columns) const {
  const Column whole = compositor_->fill(flow, Mark{}, {measure, Length::inches(1000)});
  return whole.lines.empty() ? Length{} : whole.lines.back().foot / columns + Length::points(40);
}

std::vector<std::vector<Item>> DummyType::pages(const Prose &prose, const Size &page) const {
  std::vector<std::vector<Item>> pages;
  if (!usable())
    return pages;
  const Length margin = std::min(page.width, page.height) / 12;
  const bool two = page.width > Length::inches(6);
  const Length gap = Length::inches(1, 3);
  const Length measure = two ? (page.width - margin * 2 - gap) / 2 : page.width - margin * 2;
  const Size room{measure, page.height - margin * 2};
  Flow flow = compositor_->flow(prose, reading_);
  const int columns = two ? 2 : 1;
  const Size balanced{measure, std::min(room.height, height_in(flow, measure, columns))};
  for (Mark mark; !flow.ends_at(mark);) {
    const Mark before = mark;
    std::vector<Item> items;
    for (int column = 0; column < columns && !flow.ends_at(mark); ++column) {
      Column filled = compositor_->fill(flow, mark, balanced);
      mark = filled.next;
      items.push_back(item_at(std::move(filled.lines), margin + (measure + gap) * column, margin));
    }
    if (mark == before)
      break;
    pages.push_back(std::move(items));
  }
  return pages;
}

} // namespace bodkin::press
