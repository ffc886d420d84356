#include <cmath>

#include "dice.hpp"
#include "lamp/grain.hpp"
#include "lamp/lens.hpp"
#include "lamp/photographs.hpp"

namespace {

constexpr int kSide = 675;

// A stop sign on its pole and one person with an umbrella, as outlines: inside is negative.
double box(double x, double y, double cx, double cy, double half_x, double half_y) {
  const double dx = std::abs(x - cx) - half_x;
  const double dy = std::abs(y - cy) - half_y;
  return dx > dy ? dx : dy;
}

double figure(double x, double y) {
  const double lean = (y - 500) * 0.03;
  const double down = (y - 404) / 150;
  const double width = 17 + 17 * ease(0, 0.16, down) + 8 * down;
  const double coat = y > 404 && y < 560 ? std::abs(x - 250 - lean) - width : 40;
  const double head = std::hypot(x - 246, (y - 386) * 0.86) - 14;
  const double legs = y >= 556 && y < 614 ? std::abs(std::abs(x - 252) - 11) - 7 : 40;
  const double shoes = std::fmin(box(x, y, 236, 612, 13, 5), box(x, y, 266, 612, 13, 5));
  const double bag = std::fmin(box(x, y, 300, 530, 20, 25), box(x, y, 300, 490, 3, 18));
  const double dome = std::hypot((x - 238) / 1.6, y - 362) - 66;
  const double scallop = 352 - 7 * std::abs(std::sin((x - 133) * 0.0599));
  const double canopy = std::fmax(dome, y - scallop);
  const double tip = box(x, y, 238, 292, 2, 10);
  const double stick = y > 330 && y < 450 ? std::abs(x - 238 - (y - 352) * 0.1) - 2 : 40;
  const double person = std::fmin(std::fmin(coat, head), std::fmin(legs, shoes));
  return std::fmin(std::fmin(person, bag), std::fmin(std::fmin(canopy, tip), stick));
}

} // namespace

// Somebody at the last stop, dark against the fog and the lamp in it.
Film last_stop() {
  Film film(kSide, kSide);
  for (int y = 0; y < kSide; ++y) {
    for (int x = 0; x < kSide; ++x) {
      const double fog = 0.6 + 0.8 * clouds(x / 170.0, y / 110.0, 4, 77);
      const double d = std::hypot((x - 430) / 1.15, y - 190.0);
      const double glow = 0.03 + 0.6 * std::exp(-d / 150) + 2.6 * std::exp(-d * d / 900);
      double v = glow * fog * (y > 600 ? 0.35 : 1);
      const double pole = std::fmin(box(x, y, 516, 420, 4, 200), box(x, y, 516, 250, 34, 42));
      const double lamp = std::fmin(box(x, y, 430, 172, 16, 5), box(x, y, 430, 80, 3, 92));
      const double dark = std::fmin(std::fmin(pole, lamp), figure(x, y));
      const double shade = 0.012 + 0.03 * fog * ease(620, 300, y);
      v = v * ease(-1.6, 2.2, dark) + shade * (1 - ease(-1.6, 2.2, dark));
      if (y > 600) {
        const double wet = clouds(x / 40.0, y / 5.0, 3, 5);
        v += 0.3 * std::exp(-std::abs(x - 430) / 60.0) * ease(0.4, 0.7, wet);
      }
      film.at(x, y) = {v, v, v};
    }
  }
  // Rain, caught as short bright lines where the lamp reaches.
  Dice dice(3);
  for (int i = 0; i < 380; ++i) {
    const double x = dice.between(0, kSide);
    const double y = dice.between(0, 600);
    const double d = std::hypot(x - 430, y - 190);
    const double v = 0.34 * std::exp(-d / 170) + 0.012;
    const int length = 10 + dice.pick(18);
    for (int k = 0; k < length; ++k) {
      const int px = static_cast<int>(x - k * 0.22);
      const int py = static_cast<int>(y) + k;
      if (px >= 0 && px < kSide && py < kSide)
        film.at(px, py) = film.at(px, py) + Light{v, v, v};
    }
  }
  return film;
}
