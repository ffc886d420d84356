#include "knife/blade.hpp"

#include <cmath>
#include <cstddef>
#include <functional>

namespace blade {
namespace {

constexpr double kRadian = 3.14159265358979323846 / 180;

// Catmull-Rom: the curve passes through b and c, leaning on their neighbours a and d.
Point between(Point a, Point b, Point c, Point d, double t) {
  const auto one = [t](double p, double q, double r, double s) {
    return 0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t * t +
                  (3 * q - p - 3 * r + s) * t * t * t);
  };
  return {one(a.x, b.x, c.x, d.x), one(a.y, b.y, c.y, d.y)};
}

// One edge's half-plane of the Sutherland-Hodgman clip: `depth` is positive inside.
Shape kept(const Shape &shape, const std::function<double(Point)> &depth) {
  Shape out;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const Point a = shape[i];
    const Point b = shape[(i + 1) % shape.size()];
    const double da = depth(a);
    const double db = depth(b);
    if (da >= 0)
      out.push_back(a);
    if ((da >= 0) != (db >= 0)) {
      const double t = da / (da - db);
      out.push_back({a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t});
    }
  }
  return out;
}

} // namespace

Shape box(double x, double y, double width, double height) {
  return {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}};
}

Shape disc(Point centre, double rx, double ry, int facets) {
  Shape out;
  for (int i = 0; i < facets; ++i) {
    const double angle = 360.0 * i / facets * kRadian;
    out.push_back({centre.x + rx * std::cos(angle), centre.y + ry * std::sin(angle)});
  }
  return out;
}

Line arc(Point centre, double rx, double ry, double from, double to, int facets) {
  Line out;
  for (int i = 0; i <= facets; ++i) {
    const double angle = (from + (to - from) * i / facets) * kRadian;
    out.push_back({centre.x + rx * std::cos(angle), centre.y + ry * std::sin(angle)});
  }
  return out;
}

Shape round(const Shape &through, int cuts_between) {
  Shape out;
  const std::size_t n = through.size();
  for (std::size_t i = 0; i < n; ++i) {
    for (int k = 0; k < cuts_between; ++k) {
      out.push_back(between(through[(i + n - 1) % n], through[i], through[(i + 1) % n],
                            through[(i + 2) % n], static_cast<double>(k) / cuts_between));
    }
  }
  return out;
}

Line bend(const Line &through, int cuts_between) {
  Line out;
  const std::size_t last = through.size() - 1;
  for (std::size_t i = 0; i < last; ++i) {
    for (int k = 0; k < cuts_between; ++k) {
      out.push_back(between(through[i == 0 ? 0 : i - 1], through[i], through[i + 1],
                            through[i + 2 > last ? last : i + 2],
                            static_cast<double>(k) / cuts_between));
    }
  }
  out.push_back(through[last]);
  return out;
}

Shape strip(const Line &along, double width_from, double width_to) {
  Shape there;
  Shape back;
  const std::size_t last = along.size() - 1;
  for (std::size_t i = 0; i <= last; ++i) {
    const Point before = along[i == 0 ? 0 : i - 1];
    const Point after = along[i == last ? last : i + 1];
    const double length = std::hypot(after.x - before.x, after.y - before.y);
    const double half = (width_from + (width_to - width_from) * static_cast<double>(i) /
                                          static_cast<double>(last)) /
                        2;
    const double nx = -(after.y - before.y) / length * half;
    const double ny = (after.x - before.x) / length * half;
    there.push_back({along[i].x + nx, along[i].y + ny});
    back.insert(back.begin(), {along[i].x - nx, along[i].y - ny});
  }
  there.insert(there.end(), back.begin(), back.end());
  return there;
}

Shape gouge(Point from, Point to, double width) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  const double ux = (to.x - from.x) / length;
  const double uy = (to.y - from.y) / length;
  const auto at = [&](double along, double aside) {
    return Point{from.x + ux * length * along - uy * aside,
                 from.y + uy * length * along + ux * aside};
  };
  const double half = width / 2;
  return {from, at(0.3, half * 0.7),   at(0.7, half),  at(0.97, half * 0.8),
          to,   at(0.96, -half * 0.6), at(0.6, -half), at(0.25, -half * 0.6)};
}

Shape moved(Shape shape, double across, double down) {
  for (Point &p : shape)
    p = {p.x + across, p.y + down};
  return shape;
}

Shape turned(Shape shape, double degrees, Point about) {
  const double c = std::cos(degrees * kRadian);
  const double s = std::sin(degrees * kRadian);
  for (Point &p : shape) {
    const double x = p.x - about.x;
    const double y = p.y - about.y;
    p = {about.x + x * c - y * s, about.y + x * s + y * c};
  }
  return shape;
}

Shape sized(Shape shape, double share, Point about) {
  for (Point &p : shape)
    p = {about.x + (p.x - about.x) * share, about.y + (p.y - about.y) * share};
  return shape;
}

Shape mirrored(Shape shape, double about_x) {
  for (Point &p : shape)
    p.x = 2 * about_x - p.x;
  return shape;
}

Shape within(const Shape &shape, double width, double height) {
  Shape out = kept(shape, [](Point p) { return p.x; });
  out = kept(out, [width](Point p) { return width - p.x; });
  out = kept(out, [](Point p) { return p.y; });
  return kept(out, [height](Point p) { return height - p.y; });
}

} // namespace blade
