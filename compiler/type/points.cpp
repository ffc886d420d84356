#include "type/points.hpp"

namespace bodkin {
namespace {

constexpr std::string_view zero_width_space = "\u200B";

// Where the words before a break end: spaces and line feeds hang.
std::uint32_t words_end(std::string_view text, std::uint32_t from, std::uint32_t at) {
  while (at > from) {
    const std::string_view line = text.substr(from, at - from);
    if (line.back() == ' ' || line.back() == '\n')
      at -= 1;
    else if (line.ends_with(zero_width_space))
      at -= static_cast<std::uint32_t>(zero_width_space.size());
    else
      break;
  }
  return at;
}

BreakPoint measured(Stick &stick, std::uint32_t end, std::uint32_t next, BreakPoint::Kind kind) {
  BreakPoint point;
  point.end = end;
  point.next = next;
  point.kind = kind;
  stick.go_to(end);
  point.end_x = stick.x();
  point.end_spaces = stick.spaces();
  stick.go_to(next);
  point.next_x = stick.x();
  point.next_spaces = stick.spaces();
  return point;
}

} // namespace

const ShapedGlyph &Stick::glyph() const {
  const ShapedRun &run = shaped_.runs[run_];
  return shaped_.glyphs[run.first + (run.leftwards() ? run.count - 1 - taken_ : taken_)];
}

void Stick::go_to(std::uint32_t byte) {
  while (run_ < shaped_.runs.size()) {
    const ShapedRun &run = shaped_.runs[run_];
    for (; taken_ < run.count && glyph().cluster < byte; ++taken_) {
      units_ += glyph().advance;
      if (stretches(paragraph_.text, glyph().cluster))
        space_units_ += glyph().advance;
    }
    if (taken_ < run.count || run.text.end > byte)
      return;
    x_ = x();
    spaces_ = spaces();
    units_ = space_units_ = 0;
    taken_ = 0;
    ++run_;
  }
}

Length Stick::x() const {
  if (units_ == 0)
    return x_;
  const TypedSpan &span = paragraph_.spans[shaped_.runs[run_].text.span];
  return x_ + span.cut->scaled(units_, span.size);
}

Length Stick::spaces() const {
  if (space_units_ == 0)
    return spaces_;
  const TypedSpan &span = paragraph_.spans[shaped_.runs[run_].text.span];
  return spaces_ + span.cut->scaled(space_units_, span.size);
}

std::uint32_t Stick::next_cluster() const {
  if (run_ >= shaped_.runs.size())
    return static_cast<std::uint32_t>(paragraph_.text.size());
  const ShapedRun &run = shaped_.runs[run_];
  return taken_ < run.count ? glyph().cluster : run.text.end;
}

std::vector<BreakPoint> points_of(const Paragraph &paragraph, const Shaped &shaped,
                                  const std::vector<LineBreak> &breaks) {
  Stick stick(paragraph, shaped);
  std::vector<BreakPoint> points(1);
  points.reserve(breaks.size() + 1);
  const auto size = static_cast<std::uint32_t>(paragraph.text.size());
  for (const LineBreak &line : breaks) {
    const bool must = line.must || line.at == size;
    points.push_back(measured(stick, words_end(paragraph.text, points.back().next, line.at),
                              line.at, must ? BreakPoint::Kind::must : BreakPoint::Kind::may));
  }
  if (points.size() == 1) {
    points.push_back({});
    points.back().kind = BreakPoint::Kind::must;
  }
  return points;
}

void add_points_between(Stick &stick, const Shaped &shaped,
                        const std::vector<std::uint32_t> &letters, std::size_t point,
                        std::vector<BreakPoint> &points) {
  const BreakPoint &from = shaped.points[point];
  const BreakPoint &to = shaped.points[point + 1];
  for (const std::uint32_t letter : letters) {
    if (letter <= from.next || letter >= to.end)
      continue;
    stick.go_to(letter);
    if (stick.next_cluster() == letter)
      points.push_back(measured(stick, letter, letter, BreakPoint::Kind::in_a_word));
  }
}

} // namespace bodkin
