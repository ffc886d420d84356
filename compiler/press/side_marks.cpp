#include "press/side_marks.hpp"

#include "press/letters.hpp"

#include <algorithm>
#include <array>
#include <numbers>

namespace bodkin::press {
namespace {

void draw_line(cairo_t *cairo, const MarkLine &line) {
  const std::array<double, 2> dashes{3, 2};
  cairo_set_dash(cairo, dashes.data(), line.kind == MarkLine::Kind::fold ? 2 : 0, 0);
  cairo_set_line_width(cairo, mark_line_width.in_points());
  cairo_move_to(cairo, line.start.x.in_points(), line.start.y.in_points());
  cairo_line_to(cairo, line.end.x.in_points(), line.end.y.in_points());
  cairo_stroke(cairo);
}

void draw_text(cairo_t *cairo, const MarkText &text) {
  const bool upright = text.turn % 180 == 0;
  const double x = text.box.x.in_points(), y = text.box.y.in_points();
  const double w = text.box.width.in_points(), h = text.box.height.in_points();
  const double along = upright ? w : h, across = upright ? h : w;
  const double height = std::min(across * 0.7, 6.0);
  if (letters_width(text.text, height) > along)
    return;
  cairo_save(cairo);
  cairo_translate(cairo, x + w / 2, y + h / 2);
  cairo_rotate(cairo, text.turn * std::numbers::pi / 180);
  draw_letters(cairo, text.text, -letters_width(text.text, height) / 2, height / 2, height);
  cairo_restore(cairo);
}

} // namespace

int draw_marks(const PrintJob &job, int sheet, int side, Vectors &vectors) {
  const Marks marks =
      marks_of(job.edition, job.imposition, sheet, side == 0 ? SideName::front : SideName::back);
  if (marks.lines.empty() && marks.texts.empty())
    return -1;
  const Size &size = job.imposition.sheets[static_cast<std::size_t>(sheet)].size;
  cairo_t *cairo = vectors.begin(size.width.in_points(), size.height.in_points());
  cairo_set_source_rgb(cairo, 0, 0, 0);
  for (const MarkLine &line : marks.lines)
    draw_line(cairo, line);
  cairo_set_dash(cairo, nullptr, 0, 0);
  for (const MarkText &text : marks.texts)
    draw_text(cairo, text);
  return vectors.end();
}

} // namespace bodkin::press
