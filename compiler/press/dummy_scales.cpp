#include "press/dummy_scales.hpp"

#include "press/letters.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace bodkin::press {
namespace {

constexpr double hairline = 0.3;

// ---- rulers at the edges

constexpr int most_lines = 50;
constexpr double along = 5, line_length = 4, name_height = 3.4; // from line to line; of a line
constexpr double corner_room = 12;

// From a frame whose x runs along an edge (clockwise) and whose y runs inwards.
Transform from_edge(std::size_t edge, const Size &sheet, double start) {
  const double w = sheet.width.in_points(), h = sheet.height.in_points();
  switch (edge) {
  case 0: // top
    return {.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = start, .y0 = 0};
  case 1: // right
    return {.xx = 0, .yx = 1, .xy = -1, .yy = 0, .x0 = w, .y0 = start};
  case 2: // bottom
    return {.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = w - start, .y0 = h};
  default: // left
    return {.xx = 0, .yx = -1, .xy = 1, .yy = 0, .x0 = 0, .y0 = h - start};
  }
}

void draw_flight(Strokes &drawn, const Graduation &scale, int lines) {
  const double step = scale.step.in_points();
  constexpr double under = 5; // the deepest line
  drawn.letters(scale.unit, 0, lines * step + under, name_height);
  drawn.line_width(hairline);
  for (int i = 0; i < lines; ++i) {
    drawn.move_to(i * along, i * step);
    drawn.line_to(i * along + line_length, i * step);
  }
  drawn.stroke();
  for (int i = scale.named_every; i < lines; i += scale.named_every)
    drawn.letters(std::to_string(i / scale.named_every * scale.names_count_by), i * along,
                  i * step + 2.2 + name_height, name_height);
}

// ---- scales across and down

constexpr double from_middle = 38, smallest_tick = 4, longest_tick = 8.5, figure = 2.6;

int steps_each_way(const Graduation &scale) { return scale.named_every * 4; }

double tick_length(const Graduation &scale, int step) {
  const int away = std::abs(step);
  if (away % (2 * scale.named_every) == 0 ||
      (scale.named_every < 5 && away % scale.named_every == 0))
    return longest_tick;
  return away % scale.named_every == 0 ? (smallest_tick + longest_tick) / 2 : smallest_tick;
}

// In a frame whose x runs along the scale and whose ticks rise towards negative y.
void draw_scale(Strokes &drawn, const Graduation &scale, bool figures_upside_down) {
  const double step = scale.step.in_points();
  const int reach = steps_each_way(scale);
  // The names of pieces laid many up lie under it.
  drawn.grey(1);
  drawn.rectangle(-reach * step - 5, -longest_tick - 7, 2 * (reach * step + 5), longest_tick + 9);
  drawn.fill();
  drawn.grey(0);
  drawn.line_width(hairline);
  drawn.move_to(-reach * step - 3, 0);
  drawn.line_to(reach * step + 3, 0);
  for (int i = -reach; i <= reach; ++i) {
    drawn.move_to(i * step, 0);
    drawn.line_to(i * step, -tick_length(scale, i));
  }
  drawn.stroke();
  const int named = scale.named_every < 5 ? scale.named_every : 2 * scale.named_every;
  for (int i = -reach; i <= reach; i += named) {
    const std::string text = std::to_string(std::abs(i) / scale.named_every * scale.names_count_by);
    const double wide = letters_width(text, figure);
    drawn.save();
    drawn.map({.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = i * step, .y0 = -longest_tick - 1.5});
    if (figures_upside_down)
      drawn.map({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = -figure});
    drawn.letters(text, -wide / 2, 0, figure);
    drawn.restore();
  }
}

} // namespace

Graduation graduation(Ruler ruler) {
  if (ruler == Ruler::inches)
    return {Length::inches(1, 100), 5, 5, "hundredths of an inch from the edge"};
  return {Length::mm(1) / 4, 4, 1, "millimetres from the edge"};
}

void draw_rulers(Strokes &drawn, const Size &sheet, const Graduation &lines) {
  drawn.grey(0);
  for (std::size_t edge = 0; edge < 4; ++edge) {
    const double length = (edge % 2 == 0 ? sheet.width : sheet.height).in_points();
    const int fit = static_cast<int>((length - 2 * corner_room) / along);
    const int count = std::clamp(fit, 0, most_lines);
    const double start = std::max(corner_room, length / 4 - count * along / 2);
    drawn.save();
    drawn.map(from_edge(edge, sheet, start));
    draw_flight(drawn, lines, count);
    drawn.restore();
  }
}

// The front's steps rise upwards (across) and leftwards (down). Through the paper the back's must
// fall and lie to the right of the same lines: what the leaf's axis mirrors is turned back here.
void draw_crossed_scales(Strokes &drawn, const Sheet &sheet, SideName side,
                         const Graduation &lines) {
  const double w = sheet.size.width.in_points(), h = sheet.size.height.in_points();
  const bool back = side == SideName::back;
  const bool mirror_x = back && sheet.turns_upright, mirror_y = back && !sheet.turns_upright;
  drawn.grey(0);
  drawn.save(); // across
  drawn.map({.xx = 1,
             .yx = 0,
             .xy = 0,
             .yy = 1,
             .x0 = w / 2 + (mirror_x ? -from_middle : from_middle),
             .y0 = h / 2});
  const bool falls = back && !mirror_y;
  if (falls)
    drawn.map({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = 0});
  draw_scale(drawn, lines, falls);
  drawn.restore();
  drawn.save(); // down: turned a quarter to the left, so that steps rise to the left
  drawn.map({.xx = 1,
             .yx = 0,
             .xy = 0,
             .yy = 1,
             .x0 = w / 2,
             .y0 = h / 2 + (mirror_y ? -from_middle : from_middle)});
  drawn.map({.xx = 0, .yx = -1, .xy = 1, .yy = 0, .x0 = 0, .y0 = 0});
  const bool to_the_right = back && !mirror_x;
  if (to_the_right)
    drawn.map({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = 0});
  draw_scale(drawn, lines, false);
  drawn.restore();
}

} // namespace bodkin::press
