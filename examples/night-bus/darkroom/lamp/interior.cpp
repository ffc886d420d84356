#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

#include "lamp/grain.hpp"
#include "lamp/lens.hpp"
#include "lamp/photographs.hpp"

namespace {

constexpr int kWide = 1575;
constexpr int kHigh = 1050;

// The saloon is a box 2.4 wide (x from -1.2), 2.1 high (y from 0) and 9 long (z away from the eye);
// seats are boxes in it. Everything is traced with straight rays.
struct Vector {
  double x, y, z;
};
Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
Vector operator*(Vector a, double s) { return {a.x * s, a.y * s, a.z * s}; }
double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
Vector unit(Vector a) { return a * (1 / std::sqrt(dot(a, a))); }

enum class Stuff { cloth, rail, metal };

struct Block {
  Vector low, high;
  Stuff stuff;
};

struct Hit {
  double far;
  Vector normal;
  Stuff stuff;
};

std::vector<Block> furniture() {
  std::vector<Block> out;
  for (int row = 0; row < 9; ++row) {
    const double z = 1.5 + 0.82 * row;
    for (const double side : {-1.0, 1.0}) {
      const double inner = side * 0.3;
      const double outer = side * 1.14;
      const double left = std::min(inner, outer);
      const double right = std::max(inner, outer);
      out.push_back({{left, 0.36, z - 0.42}, {right, 0.46, z}, Stuff::cloth});
      out.push_back({{left, 0.42, z}, {right, 1.0, z + 0.09}, Stuff::cloth});
      out.push_back({{left + 0.03, 1.0, z + 0.02}, {right - 0.03, 1.05, z + 0.06}, Stuff::rail});
      out.push_back({{inner - 0.02, 0, z - 0.06}, {inner + 0.02, 0.4, z - 0.02}, Stuff::metal});
      if (row % 2 == 1) {
        out.push_back(
            {{inner - 0.016, 0.9, z + 0.02}, {inner + 0.016, 2.1, z + 0.05}, Stuff::rail});
      }
    }
  }
  for (const double x : {-0.34, 0.34}) {
    out.push_back({{x - 0.014, 1.84, 0}, {x + 0.014, 1.868, 8.9}, Stuff::rail});
  }
  return out;
}

// Slab test; gives the entering face's normal.
std::optional<Hit> strike(const Block &block, Vector eye, Vector way) {
  double near = 1e-4;
  double far = 1e9;
  Vector normal{0, 0, 0};
  const std::array<std::array<double, 4>, 3> axes = {{{block.low.x, block.high.x, eye.x, way.x},
                                                      {block.low.y, block.high.y, eye.y, way.y},
                                                      {block.low.z, block.high.z, eye.z, way.z}}};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto [low, high, from, along] = axes[i];
    const double slope = std::abs(along) < 1e-9 ? 1e-9 : along;
    double enter = (low - from) / slope;
    double leave = (high - from) / slope;
    if (enter > leave)
      std::swap(enter, leave);
    if (enter > near) {
      near = enter;
      const double sign = slope > 0 ? -1 : 1;
      normal = {i == 0 ? sign : 0, i == 1 ? sign : 0, i == 2 ? sign : 0};
    }
    far = std::min(far, leave);
  }
  if (near > far || near <= 1e-3)
    return std::nullopt;
  return Hit{near, normal, block.stuff};
}

std::optional<Hit> nearest(const std::vector<Block> &blocks, Vector eye, Vector way) {
  std::optional<Hit> best;
  for (const Block &block : blocks) {
    const std::optional<Hit> hit = strike(block, eye, way);
    if (hit && (!best || hit->far < best->far))
      best = hit;
  }
  return best;
}

// Strip lamps run along the ceiling in lengths of 0.9, every other one dark at this hour.
bool is_lamp(Vector at) {
  const double along = at.z / 1.4;
  return std::abs(std::abs(at.x) - 0.62) < 0.07 && along - std::floor(along) < 0.62;
}

double lit(const std::vector<Block> &blocks, Vector at, Vector normal) {
  double sum = 0.045;
  for (int i = 0; i < 6; ++i) {
    for (const double x : {-0.62, 0.62}) {
      const Vector lamp{x, 2.07, 0.43 + 1.4 * i};
      const Vector to = lamp - at;
      const double distance2 = dot(to, to);
      const Vector way = unit(to);
      const double facing = dot(normal, way);
      if (facing <= 0)
        continue;
      const std::optional<Hit> between = nearest(blocks, at + normal * 2e-3, way);
      if (between && between->far * between->far < distance2)
        continue;
      sum += 0.5 * facing * (0.25 + 0.75 * std::abs(way.y)) / (0.35 + distance2);
    }
  }
  return sum;
}

struct Surface {
  Vector at, normal;
  double paint;
  double glow;
};

// Lamps of the street, gone soft with speed: a row of discs behind the side windows.
double passing(Vector at) {
  const double side = at.x > 0 ? 0.4 : 0.0;
  const double place = at.z / 1.9 + side;
  const double z = (place - std::floor(place) - 0.5) * 1.9;
  const double y = at.y - 1.36 - 0.1 * side;
  const double d = std::sqrt(z * z * 0.35 + y * y);
  return 0.9 * (1 - ease(0.05, 0.085, d)) + 0.12 * std::exp(-d * 7);
}

// The box itself, seen from within.
Surface shell(Vector eye, Vector way) {
  const double tx = ((way.x > 0 ? 1.2 : -1.2) - eye.x) / way.x;
  const double ty = ((way.y > 0 ? 2.1 : 0.0) - eye.y) / way.y;
  const double tz = (9 - eye.z) / way.z;
  if (tz > 0 && tz < tx && tz < ty) {
    const Vector at = eye + way * tz;
    const bool glass = at.y > 0.95 && at.y < 1.8 && std::abs(at.x) < 1.05 && std::abs(at.x) > 0.03;
    return {at, {0, 0, -1}, glass ? 0.02 : 0.5, glass ? 0.02 : 0};
  }
  if (tx < ty) {
    const Vector at = eye + way * tx;
    const double pane = at.z / 1.64 - std::floor(at.z / 1.64);
    const bool glass = at.y > 0.86 && at.y < 1.66 && pane > 0.06;
    const double night = 0.012 + passing(at);
    return {at, {at.x > 0 ? -1.0 : 1.0, 0, 0}, glass ? 0.03 : 0.55, glass ? night * 0.5 : 0};
  }
  const Vector at = eye + way * ty;
  if (way.y > 0)
    return {at, {0, -1, 0}, 0.75, is_lamp(at) ? 3.4 : 0.05};
  const double worn = 0.1 + 0.12 * clouds(at.x * 7, at.z * 3, 4, 15);
  const double rib = std::abs(at.x) < 0.28 && (at.x * 26 - std::floor(at.x * 26)) < 0.3 ? 0.6 : 1;
  return {at, {0, 1, 0}, worn * rib, 0};
}

double paint_of(const Hit &hit, Vector at) {
  if (hit.stuff == Stuff::rail)
    return 0.85;
  if (hit.stuff == Stuff::metal)
    return 0.3;
  // Moquette: small lozenges, woven.
  const double u = std::abs(at.x * 14 - std::floor(at.x * 14) - 0.5);
  const double v = std::abs(at.y * 14 + at.z * 14 - std::floor(at.y * 14 + at.z * 14) - 0.5);
  return u + v < 0.34 ? 0.5 : 0.15 + 0.05 * cloud(at.x * 190, at.y * 190, 4);
}

double look(const std::vector<Block> &blocks, Vector eye, Vector way, int depth) {
  const Surface wall = shell(eye, way);
  const std::optional<Hit> hit = nearest(blocks, eye, way);
  const double wall_far = std::sqrt(dot(wall.at - eye, wall.at - eye));
  if (hit && hit->far < wall_far) {
    const Vector at = eye + way * hit->far;
    return paint_of(*hit, at) * lit(blocks, at, hit->normal);
  }
  double light = wall.glow + wall.paint * lit(blocks, wall.at, wall.normal);
  // Dark glass and the wet floor give back some of the saloon.
  const bool mirror = wall.paint < 0.05 || wall.normal.y > 0.5;
  if (mirror && depth == 0) {
    const Vector back = way - wall.normal * (2 * dot(way, wall.normal));
    const double share = wall.normal.y > 0.5 ? 0.16 : 0.3;
    light += share * look(blocks, wall.at + wall.normal * 1e-3, back, 1);
  }
  return light;
}

} // namespace

Film empty_seats() {
  const std::vector<Block> blocks = furniture();
  const Vector eye{0.1, 1.42, -0.1};
  Film film(kWide, kHigh);
  for (int y = 0; y < kHigh; ++y) {
    for (int x = 0; x < kWide; ++x) {
      double sum = 0;
      for (const double off : {0.25, 0.75}) {
        const double u = (x + off - kWide * 0.5) / kWide * 1.5;
        const double v = (kHigh * 0.42 - y - (1 - off)) / kWide * 1.5;
        sum += look(blocks, eye, unit({u - 0.03, v - 0.04, 1}), 0);
      }
      film.at(x, y) = Light{0.5, 0.5, 0.5} * sum;
    }
  }
  return film;
}
