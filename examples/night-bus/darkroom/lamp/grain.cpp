#include "lamp/grain.hpp"

#include <cmath>

#include "dice.hpp"

namespace {

double corner(std::int64_t x, std::int64_t y, std::uint64_t seed) {
  const auto ux = static_cast<std::uint64_t>(x);
  const auto uy = static_cast<std::uint64_t>(y);
  return Dice(seed ^ (ux * 0x8da6b343ULL) ^ (uy * 0xd8163841ULL << 7)).share();
}

} // namespace

double cloud(double x, double y, std::uint64_t seed) {
  const double bx = std::floor(x);
  const double by = std::floor(y);
  const auto ix = static_cast<std::int64_t>(bx);
  const auto iy = static_cast<std::int64_t>(by);
  const double fx = ease(0, 1, x - bx);
  const double fy = ease(0, 1, y - by);
  const double top = corner(ix, iy, seed) * (1 - fx) + corner(ix + 1, iy, seed) * fx;
  const double foot = corner(ix, iy + 1, seed) * (1 - fx) + corner(ix + 1, iy + 1, seed) * fx;
  return top * (1 - fy) + foot * fy;
}

double clouds(double x, double y, int layers, std::uint64_t seed) {
  double sum = 0;
  double weight = 0.5;
  double all = 0;
  for (int i = 0; i < layers; ++i) {
    sum += weight * cloud(x, y, seed + static_cast<std::uint64_t>(i));
    all += weight;
    weight /= 2;
    x *= 2;
    y *= 2;
  }
  return sum / all;
}

void grain(Film &film, double strength, std::uint64_t seed) {
  for (int y = 0; y < film.height(); ++y) {
    for (int x = 0; x < film.width(); ++x) {
      const double fine = cloud(x * 0.83, y * 0.83, seed) - 0.5;
      const double clump = cloud(x * 0.31, y * 0.31, seed + 9) - 0.5;
      Light &light = film.at(x, y);
      const double tone = (light.r + light.g + light.b) / 3;
      const double middle = 0.25 + 1.5 * std::sqrt(tone < 1 ? tone * (1 - tone) : 0);
      const double more = 1 + strength * middle * (fine * 1.5 + clump);
      light = light * (more < 0 ? 0 : more);
      const double base = 0.004 * strength * (fine + 0.5);
      light = light + Light{base, base, base};
    }
  }
}
