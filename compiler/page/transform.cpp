#include "page/transform.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bodkin {
namespace {

// Quarter turns are exact, so that what stands square stays square.
Point unit_vector(Angle angle) {
  constexpr std::int32_t quarter = 90'000;
  const std::int32_t turn = ((angle.thousandths % (4 * quarter)) + 4 * quarter) % (4 * quarter);
  switch (turn) {
  case 0:
    return {1, 0};
  case quarter:
    return {0, 1};
  case 2 * quarter:
    return {-1, 0};
  case 3 * quarter:
    return {0, -1};
  default:
    break;
  }
  const double radians = turn / 1000.0 * std::numbers::pi / 180;
  return {std::cos(radians), std::sin(radians)};
}

} // namespace

Transform Transform::moved(Length dx, Length dy) {
  return {.x0 = dx.in_points(), .y0 = dy.in_points()};
}

Transform Transform::turned(Angle angle, Point about) {
  const auto [cosine, sine] = unit_vector(angle);
  return {.xx = cosine,
          .yx = sine,
          .xy = -sine,
          .yy = cosine,
          .x0 = about.x - cosine * about.x + sine * about.y,
          .y0 = about.y - sine * about.x - cosine * about.y};
}

Transform Transform::scaled(double across, double down) { return {.xx = across, .yy = down}; }

Transform operator*(const Transform &outer, const Transform &inner) {
  const Point origin = outer({inner.x0, inner.y0});
  return {.xx = outer.xx * inner.xx + outer.xy * inner.yx,
          .yx = outer.yx * inner.xx + outer.yy * inner.yx,
          .xy = outer.xx * inner.xy + outer.xy * inner.yy,
          .yy = outer.yx * inner.xy + outer.yy * inner.yy,
          .x0 = origin.x,
          .y0 = origin.y};
}

Point middle_of(const Box &box) {
  return {box.x.in_points() + box.width.in_points() / 2,
          box.y.in_points() + box.height.in_points() / 2};
}

Point corner_of(const Box &box) { return {box.x.in_points(), box.y.in_points()}; }

Polygon polygon_of(const Box &box, const Transform &transform) {
  const double left = box.x.in_points(), top = box.y.in_points();
  const double right = box.right().in_points(), foot = box.foot().in_points();
  return {transform({left, top}), transform({right, top}), transform({right, foot}),
          transform({left, foot})};
}

Box bounds_of(const Polygon &polygon) {
  if (polygon.empty())
    return {};
  Point least = polygon.front(), most = polygon.front();
  for (const Point &p : polygon) {
    least = {std::min(least.x, p.x), std::min(least.y, p.y)};
    most = {std::max(most.x, p.x), std::max(most.y, p.y)};
  }
  const Length x = Length::nearest_points(least.x), y = Length::nearest_points(least.y);
  return {x, y, Length::nearest_points(most.x) - x, Length::nearest_points(most.y) - y};
}

} // namespace bodkin
