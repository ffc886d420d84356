#include "lamp/lens.hpp"

#include <algorithm>
#include <cmath>

namespace {

struct Reach {
  int left, right, top, foot;
};

Reach reach(const Film &film, double x, double y, double rx, double ry) {
  return {std::max(0, static_cast<int>(x - rx)),
          std::min(film.width() - 1, static_cast<int>(x + rx) + 1),
          std::max(0, static_cast<int>(y - ry)),
          std::min(film.height() - 1, static_cast<int>(y + ry) + 1)};
}

// One box pass along a line of `count` samples that lie `get`/`put` apart; a running sum.
template <typename Get, typename Put>
void box_line(int count, int radius, Get get, Put put) {
  const double share = 1.0 / (2 * radius + 1);
  Light sum;
  for (int i = -radius; i <= radius; ++i)
    sum = sum + get(std::clamp(i, 0, count - 1));
  for (int i = 0; i < count; ++i) {
    put(i, sum * share);
    sum = sum + get(std::min(i + radius + 1, count - 1)) + get(std::max(i - radius, 0)) * -1;
  }
}

Film box(const Film &film, int radius) {
  Film across(film.width(), film.height());
  for (int y = 0; y < film.height(); ++y) {
    box_line(
        film.width(), radius, [&](int x) { return film.at(x, y); },
        [&](int x, Light light) { across.at(x, y) = light; });
  }
  Film down(film.width(), film.height());
  for (int x = 0; x < film.width(); ++x) {
    box_line(
        film.height(), radius, [&](int y) { return across.at(x, y); },
        [&](int y, Light light) { down.at(x, y) = light; });
  }
  return down;
}

} // namespace

void lay_disc(Film &film, double x, double y, double radius, Light light) {
  const Reach r = reach(film, x, y, radius + 2, radius + 2);
  for (int iy = r.top; iy <= r.foot; ++iy) {
    for (int ix = r.left; ix <= r.right; ++ix) {
      const double d = std::hypot(ix - x, iy - y);
      const double inside = 1 - ease(radius - radius * 0.06 - 1, radius + 1, d);
      const double rim = 0.8 + 0.5 * ease(radius * 0.72, radius * 0.97, d);
      film.at(ix, iy) = film.at(ix, iy) + light * (inside * rim);
    }
  }
}

void lay_glow(Film &film, double x, double y, double radius_x, double radius_y, Light light) {
  const Reach r = reach(film, x, y, radius_x * 3, radius_y * 3);
  for (int iy = r.top; iy <= r.foot; ++iy) {
    for (int ix = r.left; ix <= r.right; ++ix) {
      const double dx = (ix - x) / radius_x;
      const double dy = (iy - y) / radius_y;
      film.at(ix, iy) = film.at(ix, iy) + light * std::exp(-0.5 * (dx * dx + dy * dy));
    }
  }
}

Film blurred(const Film &film, int radius) { return box(box(box(film, radius), radius), radius); }

void bloom(Film &film, int radius, double share) {
  const Film near = blurred(film, radius);
  const Film far = blurred(near, radius * 3);
  for (int y = 0; y < film.height(); ++y) {
    for (int x = 0; x < film.width(); ++x) {
      film.at(x, y) = film.at(x, y) * (1 - share) + near.at(x, y) * (share * 0.6) +
                      far.at(x, y) * (share * 0.4);
    }
  }
}

void vignette(Film &film, double strength) {
  const double half = std::hypot(film.width(), film.height()) / 2;
  for (int y = 0; y < film.height(); ++y) {
    for (int x = 0; x < film.width(); ++x) {
      const double d = std::hypot(x - film.width() / 2.0, y - film.height() / 2.0) / half;
      const double cosine = 1 / std::sqrt(1 + strength * d * d);
      film.at(x, y) = film.at(x, y) * (cosine * cosine * cosine * cosine);
    }
  }
}
