#include "press/leaflet_pen.hpp"

#include "press/ink.hpp"
#include "press/leaflet_layout.hpp"

#include <algorithm>
#include <cmath>

namespace bodkin::press {
namespace {

constexpr double radians = 3.14159265358979323846 / 180;
constexpr double halo = 2.2;       // of white, on either side of a line over a picture
constexpr double close_halo = 1.2; // where what stands beside the line has to be seen

void grey(cairo_t *cairo, double value) { cairo_set_source_rgb(cairo, value, value, value); }

} // namespace

void LeafletPen::line(Point a, Point b, double width) const {
  grey(cairo_, 0);
  cairo_set_line_width(cairo_, width);
  cairo_move_to(cairo_, a.x, a.y);
  cairo_line_to(cairo_, b.x, b.y);
  cairo_stroke(cairo_);
}

void LeafletPen::thread(Point a, Point b) const {
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, 0.4 + close_halo);
  cairo_move_to(cairo_, a.x, a.y);
  cairo_line_to(cairo_, b.x, b.y);
  cairo_stroke(cairo_);
  line(a, b, 0.4);
}

void LeafletPen::dashed(Point a, Point b, double width, double dash, double gap) const {
  const double pattern[] = {dash, gap};
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, width + halo);
  cairo_move_to(cairo_, a.x, a.y);
  cairo_line_to(cairo_, b.x, b.y);
  cairo_stroke(cairo_);
  cairo_set_dash(cairo_, pattern, 2, 0);
  line(a, b, width);
  cairo_set_dash(cairo_, nullptr, 0, 0);
}

void LeafletPen::cut(Point a, Point b) const { dashed(a, b, 1.2, 2.4, 2); }

void LeafletPen::box(Point a, Point b, double width) const {
  grey(cairo_, 0);
  cairo_set_line_width(cairo_, width);
  cairo_rectangle(cairo_, a.x, a.y, b.x - a.x, b.y - a.y);
  cairo_stroke(cairo_);
}

void LeafletPen::turned_box(Point a, Point b, Angle turn) const {
  cairo_save(cairo_);
  cairo_translate(cairo_, (a.x + b.x) / 2, (a.y + b.y) / 2);
  cairo_rotate(cairo_, turn.degrees() * radians);
  const double w = b.x - a.x, h = b.y - a.y;
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, 1.6 + close_halo);
  cairo_rectangle(cairo_, -w / 2, -h / 2, w, h);
  cairo_stroke(cairo_);
  cairo_restore(cairo_);
  cairo_save(cairo_);
  cairo_translate(cairo_, (a.x + b.x) / 2, (a.y + b.y) / 2);
  cairo_rotate(cairo_, turn.degrees() * radians);
  box({-w / 2, -h / 2}, {w / 2, h / 2}, 1.6);
  cairo_restore(cairo_);
}

void LeafletPen::sheet(Point a, Point b, bool back) const {
  grey(cairo_, back ? 0.9 : 1);
  cairo_rectangle(cairo_, a.x, a.y, b.x - a.x, b.y - a.y);
  cairo_fill_preserve(cairo_);
  grey(cairo_, 0);
  cairo_set_line_width(cairo_, 0.7);
  cairo_stroke(cairo_);
}

void LeafletPen::staple(Point a, Point b) const {
  constexpr double thick = 2.8, rim = 2.4;
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, thick + 2 * rim);
  cairo_move_to(cairo_, a.x, a.y - rim);
  cairo_line_to(cairo_, b.x, b.y + rim);
  cairo_stroke(cairo_);
  line(a, b, thick);
}

void LeafletPen::dot(Point middle, double radius) const {
  grey(cairo_, 1);
  cairo_arc(cairo_, middle.x, middle.y, radius + halo / 2, 0, 360 * radians);
  cairo_fill(cairo_);
  grey(cairo_, 0);
  cairo_arc(cairo_, middle.x, middle.y, radius, 0, 360 * radians);
  cairo_fill(cairo_);
}

void LeafletPen::arrow(Point from, Point to) const {
  const double dx = to.x - from.x, dy = to.y - from.y;
  const double bow = 0.22; // of its length, to the side that is up or left
  const bool level = std::abs(dx) > std::abs(dy);
  const double length = std::hypot(dx, dy) * bow;
  const Point control{(from.x + to.x) / 2 - (level ? 0 : length),
                      (from.y + to.y) / 2 - (level ? length : 0)};
  const auto path = [&] {
    cairo_move_to(cairo_, from.x, from.y);
    cairo_curve_to(cairo_, control.x, control.y, control.x, control.y, to.x, to.y);
    cairo_stroke(cairo_);
  };
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, 1.4 + 2 * halo);
  path();
  grey(cairo_, 0);
  cairo_set_line_width(cairo_, 1.4);
  path();
  const double angle = std::atan2(to.y - control.y, to.x - control.x);
  cairo_move_to(cairo_, to.x + 2 * std::cos(angle), to.y + 2 * std::sin(angle));
  for (const double side : {-0.42, 0.42})
    cairo_line_to(cairo_, to.x - 8 * std::cos(angle + side), to.y - 8 * std::sin(angle + side));
  cairo_close_path(cairo_);
  cairo_fill(cairo_);
}

void LeafletPen::ticks(Point a, Point b) const {
  const bool level = std::abs(b.x - a.x) > std::abs(b.y - a.y);
  for (const Point &end : {a, b})
    line({end.x - (level ? 0 : 3.5), end.y - (level ? 3.5 : 0)},
         {end.x + (level ? 0 : 3.5), end.y + (level ? 3.5 : 0)}, 0.9);
}

void LeafletPen::measure(Point a, Point b, std::string_view says) const {
  const bool level = std::abs(b.x - a.x) > std::abs(b.y - a.y);
  grey(cairo_, 1);
  cairo_set_line_width(cairo_, 0.9 + 2 * halo);
  cairo_move_to(cairo_, a.x, a.y);
  cairo_line_to(cairo_, b.x, b.y);
  cairo_stroke(cairo_);
  line(a, b, 0.9);
  ticks(a, b);
  const double wide = type_.width(says, LeafletRole::measure) + 8;
  const double long_side = std::hypot(b.x - a.x, b.y - a.y);
  const double needs = (level ? wide : type_.leading(LeafletRole::measure)) + 10;
  Point middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
  if (long_side < needs) // beside it, further in
    middle = level ? Point{middle.x, middle.y - 11} : Point{middle.x + wide / 2 + 4, middle.y};
  centred(says, LeafletRole::measure, middle, 0, true, false);
}

void LeafletPen::measure_beside(Point a, Point b, std::string_view says,
                                paperwork::Beside side) const {
  line(a, b, 0.7);
  ticks(a, b);
  const bool level = side == paperwork::Beside::above || side == paperwork::Beside::below;
  const double off = 7;
  const Point middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
  const double wide = type_.width(says, LeafletRole::measure);
  if (std::hypot(b.x - a.x, b.y - a.y) >= wide + 2) {
    const double by =
        side == paperwork::Beside::above || side == paperwork::Beside::left ? -off : off;
    centred(says, LeafletRole::measure,
            level ? Point{middle.x, middle.y + by} : Point{middle.x + by, middle.y},
            level ? 0 : -90, false, false);
  } else if (level) {
    // Too short to hold it: past the end.
    centred(says, LeafletRole::measure, {std::max(a.x, b.x) + wide / 2 + 5, middle.y}, 0, false,
            false);
  } else {
    const double by = wide / 2 + 6;
    centred(says, LeafletRole::measure,
            {middle.x + (side == paperwork::Beside::left ? -by : by), middle.y}, 0, false, false);
  }
}

void LeafletPen::lettering(Point middle, std::string_view says, int turn) const {
  centred(says, LeafletRole::page, middle, turn, true, false);
}

void LeafletPen::page_number(Point middle, std::string_view says, int turn, bool foot_line) const {
  centred(says, LeafletRole::page, middle, turn, false, foot_line);
}

void LeafletPen::badge(Point middle, std::string_view says) const {
  const double radius =
      std::max(7.0, type_.width(says, LeafletRole::measure) / 2 + 2.5); // so that two figures fit
  cairo_arc(cairo_, middle.x, middle.y, radius, 0, 360 * radians);
  grey(cairo_, 1);
  cairo_fill_preserve(cairo_);
  grey(cairo_, 0);
  cairo_set_line_width(cairo_, 0.8);
  cairo_stroke(cairo_);
  centred(says, LeafletRole::measure, middle, 0, false, false);
}

void LeafletPen::note(Point left, std::string_view says) const {
  words(says, LeafletRole::measure, left.x, left.y);
}

void LeafletPen::words(std::string_view says, LeafletRole role, double x, double y) const {
  draw(cairo_, words_at({type_.line(says, role)}, x, y), fonts_);
}

void LeafletPen::centred(std::string_view says, LeafletRole role, Point middle, double degrees,
                         bool ground, bool foot_line) const {
  if (says.empty())
    return;
  const double wide = type_.width(says, role), high = type_.leading(role);
  cairo_save(cairo_);
  cairo_translate(cairo_, middle.x, middle.y);
  cairo_rotate(cairo_, degrees * radians);
  if (ground) {
    grey(cairo_, 1);
    cairo_rectangle(cairo_, -wide / 2 - 3, -high / 2, wide + 6, high);
    cairo_fill(cairo_);
  }
  words(says, role, -wide / 2, -high / 2);
  if (foot_line)
    line({-wide / 2, high / 2 - 1}, {wide / 2, high / 2 - 1}, 0.8);
  cairo_restore(cairo_);
}

} // namespace bodkin::press
