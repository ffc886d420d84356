#include "press/fitted_type.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

constexpr double smaller = 0.97; // each size that is tried, against the one before
constexpr double least = 4;      // points; nobody reads what is smaller

std::vector<std::string_view> lines_of(std::string_view words) {
  std::vector<std::string_view> lines;
  for (std::size_t end = words.find('\n'); end != std::string_view::npos; end = words.find('\n')) {
    lines.push_back(words.substr(0, end));
    words.remove_prefix(end + 1);
  }
  lines.push_back(words);
  return lines;
}

Prose paragraphs(std::string_view words) {
  Prose prose;
  for (const std::string_view line : lines_of(words)) {
    prose.blocks.emplace_back();
    prose.blocks.back().spans.push_back(Span{.text = std::string(line)});
  }
  return prose;
}

bool fits(const std::vector<Line> &lines, double size, const TypeRoom &room) {
  const double height = static_cast<double>(lines.size()) * size * room.leading;
  return height <= room.height + 0.01 &&
         std::none_of(lines.begin(), lines.end(),
                      [](const Line &line) { return line.broken_word || line.too_wide; });
}

std::size_t whole_lines(double size, const TypeRoom &room) {
  return std::max<std::size_t>(1, static_cast<std::size_t>(room.height / (size * room.leading)));
}

} // namespace

FittedType::FittedType(const FaceOffer &offer) : faces_(offer.faces) {
  edition_.faces = offer.edition->faces;
  edition_.languages = offer.edition->languages;
  Style style;
  style.name = "fitted";
  style.face.value = offer.face;
  style.figures.value = Figures::lining;
  edition_.styles.push_back(style);
}

Problems FittedType::lacking(std::string_view words, Range from) const {
  Compositor compositor(edition_, *faces_);
  for (const std::string_view line : lines_of(words))
    compositor.line(line, static_cast<StyleId>(0), from);
  return compositor.problems();
}

std::vector<Line> FittedType::lines(std::string_view words, double size, const TypeRoom &room) {
  edition_.styles[0].size.value = Length::nearest_points(size);
  edition_.styles[0].leading.value = Length::nearest_points(size * room.leading);
  Compositor compositor(edition_, *faces_);
  Flow flow = compositor.flow(paragraphs(words), static_cast<StyleId>(0));
  return compositor.fill(flow, Mark{}, {Length::nearest_points(room.width), Length::inches(1000)})
      .lines;
}

std::vector<Line> FittedType::set(std::string_view words, const TypeRoom &room) {
  if (words.empty())
    return {};
  for (double size = room.most;; size *= smaller) {
    std::vector<Line> set = lines(words, size, room);
    if (fits(set, size, room))
      return set;
    if (size < least) {
      set.resize(std::min(set.size(), whole_lines(size, room)));
      return set;
    }
  }
}

FittedType face_for(const std::vector<FaceOffer> &offers, std::string_view words) {
  for (const FaceOffer &offer : offers)
    if (FittedType type(offer); type.lacking(words, Range{}).empty())
      return type;
  return FittedType(offers.front());
}

} // namespace bodkin::press
