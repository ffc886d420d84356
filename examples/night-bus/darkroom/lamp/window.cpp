#include <algorithm>
#include <cmath>
#include <vector>

#include "dice.hpp"
#include "lamp/grain.hpp"
#include "lamp/lens.hpp"
#include "lamp/photographs.hpp"

namespace {

constexpr int kWide = 1575;
constexpr int kHigh = 2400;

const Light kSodium{1.0, 0.44, 0.06};
const Light kLamp{1.0, 0.7, 0.28};
const Light kTail{1.0, 0.05, 0.03};
const Light kGo{0.04, 0.8, 0.45};
const Light kCold{0.25, 0.6, 1.0};

// The town behind the glass, far out of focus: big discs over a blue dark.
Film town() {
  Film film(kWide, kHigh);
  for (int y = 0; y < kHigh; ++y) {
    const double down = static_cast<double>(y) / kHigh;
    const Light sky = mix({0.006, 0.016, 0.026}, {0.05, 0.038, 0.03}, ease(0.25, 0.62, down));
    const Light road = mix(sky, {0.008, 0.012, 0.016}, ease(0.66, 0.8, down));
    for (int x = 0; x < kWide; ++x) {
      film.at(x, y) = road * (0.75 + 0.5 * clouds(x / 420.0, y / 300.0, 3, 5));
    }
  }
  Dice dice(70);
  const Light colours[] = {kSodium, kSodium, kLamp, kTail, kLamp, kGo, kCold, kSodium, kTail};
  for (int i = 0; i < 64; ++i) {
    const double x = dice.between(-60, kWide + 60);
    const double spread = dice.share() + dice.share() + dice.share() - 1.5;
    const double y = kHigh * (0.5 + 0.2 * spread);
    const Light colour = colours[dice.pick(9)];
    const double radius = dice.between(46, 104);
    lay_disc(film, x, y, radius, colour * dice.between(0.08, 0.5));
  }
  // Two lamp posts and a pair of tail lamps near by, brighter; the wet road doubles them.
  lay_disc(film, 360, 640, 128, kSodium * 0.95);
  lay_disc(film, 1240, 860, 112, kLamp * 0.9);
  lay_disc(film, 820, 1440, 88, kTail * 1.0);
  lay_disc(film, 1080, 1450, 88, kTail * 0.95);
  lay_glow(film, 360, 1950, 90, 330, kSodium * 0.16);
  lay_glow(film, 1240, 1960, 80, 300, kLamp * 0.13);
  lay_glow(film, 820, 1900, 60, 240, kTail * 0.14);
  lay_glow(film, 1080, 1900, 60, 240, kTail * 0.13);
  return film;
}

struct Drop {
  double x, y, radius, stretch;
};

// Runs of water leave a clear track and small drops behind; between them drops sit where they fell.
std::vector<Drop> drops(Dice &dice) {
  std::vector<Drop> out;
  for (int i = 0; i < 1500; ++i) {
    const double size = dice.share();
    out.push_back({dice.between(0, kWide), dice.between(0, kHigh),
                   3 + 17 * size * size * size * size, dice.between(1, 1.2)});
  }
  for (int i = 0; i < 90; ++i) {
    out.push_back({dice.between(0, kWide), dice.between(0, kHigh), dice.between(15, 34),
                   dice.between(1.02, 1.4)});
  }
  for (int run = 0; run < 15; ++run) {
    double x = dice.between(40, kWide - 40);
    double y = dice.between(-200, 900);
    const double end = y + dice.between(500, 1500);
    while (y < end) {
      x += dice.between(-7, 7);
      y += dice.between(9, 46);
      out.push_back({x + dice.between(-5, 5), y, dice.between(3, 8), dice.between(1.0, 1.9)});
    }
    out.push_back({x, y + 24, dice.between(24, 38), 1.5});
  }
  return out;
}

// A drop is a small fat lens: it shows the town upside down, dark at its rim above and lit below,
// with one hard glint.
void lay_drop(Film &film, const Film &behind, const Drop &drop, Dice &dice) {
  const double rx = drop.radius;
  const double ry = drop.radius * drop.stretch;
  const double wobble = dice.between(0.04, 0.16);
  const double phase = dice.between(0, 6.28);
  const int top = std::max(0, static_cast<int>(drop.y - ry * 1.2));
  const int foot = std::min(kHigh - 1, static_cast<int>(drop.y + ry * 1.2));
  const int left = std::max(0, static_cast<int>(drop.x - rx * 1.2));
  const int right = std::min(kWide - 1, static_cast<int>(drop.x + rx * 1.2));
  for (int y = top; y <= foot; ++y) {
    for (int x = left; x <= right; ++x) {
      const double dx = (x - drop.x) / rx;
      const double dy = (y - drop.y) / ry;
      const double rim = 1 + wobble * std::sin(3 * std::atan2(dy, dx) + phase);
      const double d = std::sqrt(dx * dx + dy * dy) / rim;
      const double cover = 1 - ease(1 - 1.6 / rx, 1 + 0.6 / rx, d);
      if (cover <= 0)
        continue;
      const double bend = 1 - d * d * 0.25;
      const double sx = drop.x - dx * 430 * bend;
      const double sy = kHigh * 0.5 - dy * 760 * bend;
      Light light = behind.seen(sx, sy) * 1.15 + Light{0.012, 0.013, 0.014};
      light = light * (1 - 0.88 * ease(0.62, 1.0, d) * (0.55 - 0.45 * dy));
      light = light +
              behind.seen(drop.x, kHigh * 0.5) * (0.9 * ease(0.5, 0.9, d) * ease(0.15, 0.9, dy));
      const double glint = std::hypot(dx + 0.34, dy + 0.42);
      if (rx > 6)
        light = light + Light{0.5, 0.46, 0.4} * (1 - ease(0.06, 0.18, glint));
      film.at(x, y) = mix(film.at(x, y), light, cover);
    }
  }
}

// Breath on the glass scatters light, except where a run of water has wiped it.
void mist(Film &film, const Film &behind) {
  const Film soft = blurred(behind, 60);
  for (int y = 0; y < kHigh; ++y) {
    for (int x = 0; x < kWide; ++x) {
      const double patch = clouds(x / 380.0, y / 520.0, 4, 21);
      const double share =
          0.12 + 0.42 * ease(0.35, 0.75, patch) * ease(0.15, 0.95, static_cast<double>(y) / kHigh);
      const double pearl = 0.92 + 0.16 * cloud(x / 3.1, y / 3.1, 33);
      film.at(x, y) =
          mix(film.at(x, y), (soft.at(x, y) + Light{0.010, 0.012, 0.014}) * pearl, share);
    }
  }
}

} // namespace

Film rain_on_window() {
  const Film behind = town();
  Film film = behind;
  mist(film, behind);
  Dice dice(202);
  std::vector<Drop> all = drops(dice);
  const Film through = blurred(behind, 34);
  for (const Drop &drop : all)
    lay_drop(film, through, drop, dice);
  return film;
}
