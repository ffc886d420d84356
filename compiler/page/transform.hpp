// A map of the plane in points, from one frame to another: a place's own frame to its page's, say.
#pragma once

#include "measure/box.hpp"
#include "measure/few.hpp"

#include <vector>

namespace bodkin {

struct Point {
  double x = 0, y = 0; // points
};

// x' = xx·x + xy·y + x0, y' = yx·x + yy·y + y0.
struct Transform {
  double xx = 1, yx = 0, xy = 0, yy = 1, x0 = 0, y0 = 0;

  Point operator()(Point p) const { return {xx * p.x + xy * p.y + x0, yx * p.x + yy * p.y + y0}; }
  bool upright() const { return yx == 0 && xy == 0; }

  static Transform moved(Length dx, Length dy);
  static Transform turned(Angle angle, Point about); // clockwise as seen
  static Transform scaled(double across, double down);
};
// First `inner`, then `outer`.
Transform operator*(const Transform &outer, const Transform &inner);

Point middle_of(const Box &box);
Point corner_of(const Box &box);
using Polygon = std::vector<Point>;
Polygon polygon_of(const Box &box, const Transform &transform);
Box bounds_of(const Polygon &polygon); // empty polygon: an empty box

} // namespace bodkin
