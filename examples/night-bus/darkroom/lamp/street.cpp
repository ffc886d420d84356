#include <algorithm>
#include <cmath>

#include "dice.hpp"
#include "lamp/grain.hpp"
#include "lamp/lens.hpp"
#include "lamp/photographs.hpp"

namespace {

constexpr int kWide = 1350;
constexpr int kHigh = 975;
constexpr double kHorizon = 400;
constexpr double kVanish = 760; // across

struct Pole {
  double x, foot, height;
};

// Lamps stand in two rows, nearer ones larger: one over the distance.
Pole pole(int number, bool left) {
  const double scale = 1 / (1.0 + 0.75 * number);
  return {kVanish + (left ? -720 : 540) * scale, kHorizon + 300 * scale, 560 * scale};
}

double grey_of_houses(double x, double y) {
  const double side = std::abs(x - kVanish);
  const double roof =
      kHorizon - 30 - side * 0.42 - 26 * (std::floor(side / 97) - 2 * std::floor(side / 194));
  return ease(roof - 3, roof + 3, y);
}

// Where the houses meet the pavement.
double walls_foot(double x) { return kHorizon + std::abs(x - kVanish) * 0.16; }

Film dry_scene() {
  Film film(kWide, kHigh);
  for (int y = 0; y < kHigh; ++y) {
    for (int x = 0; x < kWide; ++x) {
      const double haze =
          std::exp(-std::abs(y - kHorizon) / 170.0) * std::exp(-std::abs(x - kVanish) / 520.0);
      double v = 0.016 + 0.15 * haze * (0.7 + 0.6 * clouds(x / 260.0, y / 160.0, 4, 3));
      if (y < walls_foot(x))
        v *= 1 - 0.86 * grey_of_houses(x, y) * (1 - 0.55 * haze);
      film.at(x, y) = {v, v, v};
    }
  }
  // A few windows, drawn into the distance.
  Dice dice(9);
  for (int i = 0; i < 26; ++i) {
    const double depth = dice.between(0.25, 1);
    const bool left = dice.pick(2) == 0;
    const double x = kVanish + (left ? -1 : 1) * (90 + 560 * depth);
    const double y = kHorizon - dice.between(20, 210) * depth;
    const double v = dice.pick(3) == 0 ? 0.5 : 0.06;
    for (int yy = static_cast<int>(y); yy < y + 34 * depth; ++yy) {
      for (int xx = static_cast<int>(x); xx < x + 20 * depth; ++xx) {
        if (xx >= 0 && xx < kWide && yy >= 0 && yy < kHigh)
          film.at(xx, yy) = {v, v, v};
      }
    }
  }
  for (int number = 7; number >= 0; --number) {
    for (const bool left : {true, false}) {
      const Pole p = pole(number, left);
      const double top = p.foot - p.height;
      const double thick = p.height * 0.009 + 0.6;
      for (int y = std::max(0, static_cast<int>(top)); y < std::min<double>(kHigh, p.foot); ++y) {
        for (int x = static_cast<int>(p.x - thick); x <= p.x + thick; ++x) {
          if (x >= 0 && x < kWide)
            film.at(x, y) = {0.006, 0.006, 0.006};
        }
      }
      const double glow = p.height * 0.05 + 3;
      const double reach = p.x + (left ? 1 : -1) * p.height * 0.1;
      lay_glow(film, reach, top, glow * 7, glow * 6, Light{1, 1, 1} * 0.05);
      lay_glow(film, reach, top, glow, glow * 0.7, Light{1, 1, 1} * 3.2);
    }
  }
  return film;
}

// The bus, small, coming: two lamps, a lit blind, a dark front.
void bus(Film &film) {
  const double x = 700;
  const double y = 470;
  for (int yy = 372; yy < 478; ++yy) {
    for (int xx = 648; xx < 752; ++xx) {
      const bool glass = yy > 394 && yy < 430 && xx > 656 && xx < 744;
      const bool blind = yy > 378 && yy < 388 && xx > 672 && xx < 728;
      const double v = blind ? 1.6 : glass ? 0.34 : 0.03;
      film.at(xx, yy) = {v, v, v};
    }
  }
  for (const double side : {-36.0, 36.0}) {
    lay_glow(film, x + side, y - 14, 9, 9, Light{1, 1, 1} * 7);
    lay_glow(film, x + side, y - 14, 60, 46, Light{1, 1, 1} * 0.3);
  }
}

} // namespace

// The road is a mirror that is rough along the line of sight: light is drawn out downwards, and
// ripples break it.
Film wet_street() {
  Film dry = dry_scene();
  bus(dry);
  Film film = dry;
  for (int y = static_cast<int>(kHorizon) + 4; y < kHigh; ++y) {
    const double depth = (y - kHorizon) / (kHigh - kHorizon);
    for (int x = 0; x < kWide; ++x) {
      if (y < walls_foot(x) || (y < 478 && x > 646 && x < 754))
        continue;
      const double lane = (x - kVanish) / (y - kHorizon);
      const bool kerb = std::abs(lane + 2.1) < 0.05 || std::abs(lane - 1.55) < 0.05;
      const double ripple = clouds(x / (14 + 60 * depth), y / (3 + 9 * depth), 4, 12) - 0.5;
      Light sum;
      for (int k = 0; k < 26; ++k) {
        const double drawn = (k - 6) * (6 + 15 * depth);
        const double sx = x + ripple * (16 + 90 * depth);
        const double sy = 2 * (kHorizon + 66 * ease(0, 90, y - kHorizon)) - y + drawn + ripple * 80;
        sum = sum + dry.seen(sx, std::clamp(sy, 0.0, kHorizon + 70));
      }
      const double gloss = 0.3 + 0.75 * ease(0.38, 0.62, clouds(x / 190.0, y / 34.0, 3, 40));
      const double tar = 0.012 + 0.016 * cloud(x / 2.3, y / 1.7, 8);
      film.at(x, y) = sum * (gloss / 26 * (kerb ? 0.35 : 0.95)) + Light{tar, tar, tar};
    }
  }
  return film;
}
