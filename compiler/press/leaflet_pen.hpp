// Lines, arrows and measures as the pictures of leaflets have them, drawn by Cairo in black. What
// may lie on a page's own matter has a white edge round it.
#pragma once

#include "page/transform.hpp"
#include "paperwork/leaflet.hpp"
#include "press/fonts.hpp"
#include "press/leaflet_type.hpp"

#include <string_view>

namespace bodkin::press {

class LeafletPen {
public:
  LeafletPen(cairo_t *cairo, LeafletType &type, Fonts &fonts)
      : cairo_(cairo), type_(type), fonts_(fonts) {}

  void line(Point a, Point b, double width) const;
  void thread(Point a, Point b) const; // from what is measured to its measure
  void dashed(Point a, Point b, double width, double dash, double gap) const;
  void cut(Point a, Point b) const;
  void box(Point a, Point b, double width) const;
  void turned_box(Point a, Point b, Angle turn) const;
  void sheet(Point a, Point b, bool back) const; // paper that hides what lies below it
  void staple(Point a, Point b) const;
  void dot(Point middle, double radius) const;
  void arrow(Point from, Point to) const; // in a bow
  // With a tick at either end; `says` on it, or past its end where it is too short.
  void measure(Point a, Point b, std::string_view says) const;
  void measure_beside(Point a, Point b, std::string_view says, paperwork::Beside side) const;
  // Centred on a white ground; turned clockwise.
  void lettering(Point middle, std::string_view says, int turn) const;
  void page_number(Point middle, std::string_view says, int turn, bool foot_line) const;
  // A number in a ring.
  void badge(Point middle, std::string_view says) const;
  void note(Point left, std::string_view says) const;

private:
  void ticks(Point a, Point b) const;
  void words(std::string_view says, LeafletRole role, double x, double y) const;
  // Centred about a point, turned; white below where `ground`.
  void centred(std::string_view says, LeafletRole role, Point middle, double degrees, bool ground,
               bool foot_line) const;

  cairo_t *cairo_;
  LeafletType &type_;
  Fonts &fonts_;
};

} // namespace bodkin::press
