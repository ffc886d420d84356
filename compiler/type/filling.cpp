#include "type/filling.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

constexpr std::size_t many = 1'000'000'000;

std::size_t lines_in(Length height, Length leading) {
  if (leading.units() <= 0 || height < leading)
    return 0;
  return static_cast<std::size_t>(height.units() / leading.units());
}

Lines ranged(const Paragraph &paragraph, const Shaped &shaped, std::size_t to) {
  const Lines start = shaped.base_level != 0 ? Lines::right : Lines::left;
  if (paragraph.lines == Lines::left && paragraph.ranged_by_default)
    return start;
  const bool last = shaped.points[to].kind == BreakPoint::Kind::must;
  return paragraph.lines == Lines::justified && last ? start : paragraph.lines;
}

void move(Line &line, Length dx, double dy) {
  line.left += dx;
  line.right += dx;
  for (GlyphRun &run : line.runs) {
    run.left += dx.in_points();
    run.right += dx.in_points();
    for (Glyph &glyph : run.glyphs) {
      glyph.x += dx.in_points();
      glyph.y += dy;
    }
  }
}

} // namespace

// What holds for the paragraph at the mark and, where it begins there, for its first line.
struct Filling::Start {
  const Paragraph &paragraph;
  const Shaped &shaped;
  std::size_t point = 0;
  Length measure;
  Length first_in;          // less room on its first line
  std::optional<Line> sign; // as if alone, from x = 0
  bool leftwards() const { return shaped.base_level != 0; }
  Length measure_of(bool first) const { return first ? measure - first_in : measure; }
};

Line whole_line(const Case &tools, const Paragraph &paragraph) {
  const Shaped shaped = tools.shaper.shape(paragraph, tools.findings);
  return tools.setter.set({paragraph, shaped, 0, shaped.points.size() - 1, Lines::left, Length{},
                           Length::points(1'000'000), Length{}});
}

// The sign of the paragraph as a line of its own.
std::optional<Line> Filling::sign_of(const Paragraph &paragraph) const {
  if (paragraph.sign.empty() || mark_.byte != 0)
    return std::nullopt;
  Paragraph sign = paragraph;
  sign.text = sign.sign;
  sign.typed.begin = 0;
  sign.typed.end = static_cast<std::uint32_t>(sign.text.size());
  sign.spans = {sign.typed};
  return whole_line(tools_, sign);
}

Filling::Start Filling::start() {
  const Paragraph &paragraph = flow_.paragraphs[mark_.paragraph];
  const Length measure = room_.width - paragraph.inset_left - paragraph.inset_right;
  std::optional<Line> sign = sign_of(paragraph);
  Length first_in = mark_.byte == 0 ? paragraph.indent : Length{};
  // A sign wider than its hang pushes the words on.
  const Length least_gap = paragraph.typed.size / 4;
  if (sign)
    first_in = std::max(Length{}, sign->right + least_gap - paragraph.hang);
  const Shaped &shaped =
      flow_.shaped(mark_.paragraph, measure - first_in, tools_.shaper, tools_.findings);
  const std::size_t point = flow_.point_at(mark_.byte, tools_.shaper);
  return {paragraph, shaped, point, measure, first_in, std::move(sign)};
}

std::vector<std::size_t> Filling::ends(const Start &start, std::size_t most) const {
  const LinesAsked asked{start.shaped.points, start.point, most,
                         start.paragraph.lines == Lines::justified};
  return tools_.maker(asked, [&](std::size_t n) { return start.measure_of(n == 0); });
}

Line Filling::line(const Start &start, std::size_t from, std::size_t to, bool first) const {
  const Paragraph &paragraph = start.paragraph;
  const bool in_from_left = first && !start.leftwards();
  Line line =
      tools_.setter.set({paragraph, start.shaped, from, to, ranged(paragraph, start.shaped, to),
                         paragraph.inset_left + (in_from_left ? start.first_in : Length{}),
                         start.measure_of(first), top_});
  if (!first || !start.sign)
    return line;
  Line sign = *start.sign;
  const Length at = start.leftwards()
                        ? room_.width - paragraph.inset_right + paragraph.hang - sign.right
                        : paragraph.inset_left - paragraph.hang;
  move(sign, at, line.baseline - sign.baseline);
  line.left = std::min(line.left, sign.left);
  line.right = std::max(line.right, sign.right);
  line.runs.insert(start.leftwards() ? line.runs.end() : line.runs.begin(),
                   std::make_move_iterator(sign.runs.begin()),
                   std::make_move_iterator(sign.runs.end()));
  return line;
}

void Filling::pass(const Start &start, std::size_t point) {
  if (point + 1 == start.shaped.points.size())
    pass_paragraph();
  else
    mark_.byte = start.shaped.points[point].next;
}

// False where the lines must be made anew: a line came out wider than it measured, because its end
// parts letters that were joined, and went back to the break before.
bool Filling::add_lines(const Start &start, const std::vector<std::size_t> &ends) {
  std::size_t from = start.point;
  bool first = true;
  for (const std::size_t to : ends) {
    Line made = line(start, from, to, first && mark_.byte == 0);
    std::size_t end = to;
    if (made.too_wide && to > from + 1) {
      end = to - 1;
      made = line(start, from, end, first && mark_.byte == 0);
    }
    column_.lines.push_back(std::move(made));
    top_ += start.paragraph.leading;
    pass(start, end);
    if (end != to)
      return false;
    from = to;
    first = false;
  }
  return true;
}

// False where the box is full.
bool Filling::add_paragraph() {
  const Paragraph &paragraph = flow_.paragraphs[mark_.paragraph];
  if (paragraph.typed.cut == nullptr) {
    pass_paragraph();
    return true;
  }
  if (mark_.byte == 0 && !column_.lines.empty()) {
    top_ += paragraph.above;
    if (mark_.paragraph > 0)
      top_ += flow_.paragraphs[mark_.paragraph - 1].below;
  }
  const std::size_t room = lines_in(room_.height - top_, paragraph.leading);
  if (room == 0)
    return false;
  const Start begun = start();
  const std::vector<std::size_t> made = ends(begun, room);
  if (made.empty())
    return false;
  add_lines(begun, made);
  return true;
}

Column Filling::column() {
  while (!at_end() && add_paragraph()) {
  }
  column_.next = mark_;
  return std::move(column_);
}

std::int64_t Filling::count_lines() {
  std::int64_t lines = 0;
  for (; !at_end(); pass_paragraph())
    if (flow_.paragraphs[mark_.paragraph].typed.cut != nullptr)
      lines += static_cast<std::int64_t>(ends(start(), many).size());
  return lines;
}

} // namespace bodkin
