#include "press/side_marks.hpp"

#include "press/letters.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

void draw_line(Strokes &drawn, const MarkLine &line) {
  if (line.kind == MarkLine::Kind::fold)
    drawn.dashes({3, 2});
  else
    drawn.solid();
  drawn.line_width(line.width.in_points());
  drawn.move_to(line.start.x.in_points(), line.start.y.in_points());
  drawn.line_to(line.end.x.in_points(), line.end.y.in_points());
  drawn.stroke();
}

void draw_text(Strokes &drawn, const MarkText &text) {
  const bool upright = text.turn % 180 == 0;
  const Box &box = text.box;
  const double w = box.width.in_points(), h = box.height.in_points();
  const double along = upright ? w : h, across = upright ? h : w;
  const double height = std::min(across * 0.7, 6.0);
  const double width = letters_width(text.text, height);
  if (width > along)
    return;
  const Point middle = middle_of(box);
  drawn.save();
  drawn.map(Transform::turned(Angle{text.turn * 1000}, middle));
  drawn.letters(text.text, middle.x - width / 2, middle.y + height / 2, height);
  drawn.restore();
}

} // namespace

std::optional<Strokes> draw_marks(const PrintJob &job, int sheet, int side) {
  const CopyPart &part = part_of_sheet(job.parts, sheet);
  const int own = sheet_of_part(part, sheet);
  const Marks marks = marks_of(*part.edition, part.imposition, own,
                               side == 0 ? SideName::front : SideName::back, sheet - own);
  if (marks.lines.empty() && marks.texts.empty())
    return std::nullopt;
  const Size &size = job.imposition.sheets[static_cast<std::size_t>(sheet)].size;
  Strokes drawn(size.height.in_points());
  drawn.grey(0);
  for (const MarkLine &line : marks.lines)
    draw_line(drawn, line);
  drawn.solid();
  for (const MarkText &text : marks.texts)
    draw_text(drawn, text);
  return drawn;
}

} // namespace bodkin::press
