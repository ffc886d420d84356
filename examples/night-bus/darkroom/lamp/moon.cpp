#include <cmath>

#include "lamp/grain.hpp"
#include "lamp/photographs.hpp"

namespace {

constexpr int kSide = 600;

// Below zero inside the moon's outline, which a knife has cut in straight little strokes.
double crescent(double x, double y) {
  const double angle = std::atan2(y - 300, x - 280);
  const double facet = std::cos(
      (angle * 11 / 3.14159265358979 - std::floor(angle * 11 / 3.14159265358979) - 0.5) * 0.28);
  const double outer = std::hypot(x - 280, y - 300) - 262 / facet;
  const double inner = 232 - std::hypot(x - 372, y - 262);
  return outer > inner ? outer : inner;
}

} // namespace

// One impression of the lino moon, scanned: the ink lies thin in places and thick at the rims.
Film stamped_moon() {
  Film film(kSide, kSide);
  for (int y = 0; y < kSide; ++y) {
    for (int x = 0; x < kSide; ++x) {
      const double edge = crescent(x, y) + 5 * (clouds(x / 16.0, y / 16.0, 2, 61) - 0.5);
      const double speckle = clouds(x / 7.0, y / 7.0, 3, 62);
      const double starved = clouds(x / 90.0, y / 90.0, 3, 63);
      const double ink =
          (1 - ease(-2, 2, edge)) *
          ease(0.2, 0.34, speckle + 0.5 * (0.62 - starved) + 0.3 * ease(-26, -4, edge));
      const double v = 0.9 - 0.86 * ink;
      film.at(x, y) = {v, v, v};
    }
  }
  return film;
}
