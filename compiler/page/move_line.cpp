#include "page/move_line.hpp"

namespace bodkin {

void move_line(Line &line, Length dx, Length dy) {
  for (GlyphRun &run : line.runs) {
    for (Glyph &glyph : run.glyphs) {
      glyph.x += dx.in_points();
      glyph.y += dy.in_points();
    }
    run.left += dx.in_points();
    run.right += dx.in_points();
  }
  line.left += dx;
  line.right += dx;
  line.top += dy;
  line.foot += dy;
  line.baseline += dy.in_points();
}

} // namespace bodkin
