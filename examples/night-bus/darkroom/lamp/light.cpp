#include "lamp/light.hpp"

#include <algorithm>
#include <cmath>

double ease(double low, double high, double value) {
  const double t = std::clamp((value - low) / (high - low), 0.0, 1.0);
  return t * t * (3 - 2 * t);
}

Film::Film(int width, int height)
    : width_(width), height_(height),
      light_(static_cast<std::size_t>(width) * static_cast<std::size_t>(height)) {}

Light Film::seen(double x, double y) const {
  const double cx = std::clamp(x, 0.0, width_ - 1.001);
  const double cy = std::clamp(y, 0.0, height_ - 1.001);
  const int ix = static_cast<int>(cx);
  const int iy = static_cast<int>(cy);
  const double fx = cx - ix;
  const double fy = cy - iy;
  return mix(mix(at(ix, iy), at(ix + 1, iy), fx), mix(at(ix, iy + 1), at(ix + 1, iy + 1), fx), fy);
}
