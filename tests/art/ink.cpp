#include "art/ink.hpp"

#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

Pixels white(int width, int height) {
  Pixels pixels{width, height, 1, {}};
  pixels.samples.assign(pixels.stride() * static_cast<std::size_t>(height), 255);
  return pixels;
}

} // namespace

TEST_CASE("white paper has no ink") {
  CHECK(ink_hull(white(5, 5)).empty());
  Pixels nearly = white(5, 5);
  nearly.samples[12] = 250;
  CHECK(ink_hull(nearly).empty());
}

TEST_CASE("one sample of ink is outlined by its own square") {
  Pixels pixels = white(10, 5);
  pixels.row(2)[3] = 249;
  CHECK(ink_hull(pixels) == Hull{{0.4, 0.4}, {0.4, 0.6}, {0.3, 0.6}, {0.3, 0.4}});
  CHECK(ink_hull_rounded_out(pixels) == Hull{{0.5, 0.2}, {0.5, 0.8}, {0.2, 0.8}, {0.2, 0.2}});
}

TEST_CASE("the outline of a slanting line is slim") {
  Pixels pixels = white(8, 8);
  for (int i = 0; i < 8; ++i)
    pixels.row(i)[i] = 0;
  CHECK(ink_hull(pixels) == Hull{{0.125, 0}, {1, 0.875}, {1, 1}, {0.875, 1}, {0, 0.125}, {0, 0}});
}

TEST_CASE("a transparent sample is no ink whatever its colour") {
  CHECK(ink_hull(Pixels{2, 1, 4, {0, 0, 0, 0, 255, 255, 255, 255}}).empty());
  CHECK(ink_hull(Pixels{2, 1, 4, {0, 0, 0, 1, 255, 255, 255, 255}}).size() == 4);
}

TEST_CASE("a drawing's ink is outlined where its paths run, rounded outwards") {
  const Facts facts = facts_of("<svg xmlns='http://www.w3.org/2000/svg' width='100' height='100'>"
                               "<circle cx='50' cy='50' r='25'/></svg>");
  double left = 1, right = 0;
  for (const ShareSpot &spot : facts.drawing->ink) {
    left = std::min(left, spot.x);
    right = std::max(right, spot.x);
    // No corner farther out than a sample's diagonal from the circle.
    const double x = spot.x - 0.5, y = spot.y - 0.5;
    CHECK(x * x + y * y < 0.254 * 0.254);
  }
  CHECK(left <= 0.25);
  CHECK(left > 0.247);
  CHECK(right >= 0.75);
  CHECK(facts.drawing->ink.size() > 40);
}

TEST_CASE("luminance under a box is the mean of what lies there, with paper where nothing does") {
  Pixels half{128, 64, 2, {}};
  for (int y = 0; y < 64; ++y)
    for (int x = 0; x < 128; ++x) {
      half.samples.push_back(0);
      half.samples.push_back(x < 64 ? 255 : 0);
    }
  const LuminanceGrid grid = luminance_grid(half);
  CHECK(grid.columns == 64);
  CHECK(grid.rows == 64);
  CHECK(mean_luminance(grid, {0, 0, 0.5, 1}) == doctest::Approx(0));
  CHECK(mean_luminance(grid, {0.5, 0, 1, 1}) == doctest::Approx(1));
  CHECK(mean_luminance(grid, {0.5, 0, 1, 1}, 0.25) == doctest::Approx(0.25));
  CHECK(mean_luminance(grid, {0, 0, 1, 1}) == doctest::Approx(0.5));
  CHECK(luminance_at(grid, {0, 0, 1, 1}, 0.5) == doctest::Approx(0));
  CHECK(luminance_at(grid, {0, 0, 1, 1}, 0.51) == doctest::Approx(1));
}

TEST_CASE("middle grey is a fifth as light as white") {
  // sRGB 128 is 0.2158605 in linear light (IEC 61966-2-1, computed by hand).
  CHECK(mean_luminance(luminance_grid(Pixels{1, 1, 1, {128}}), {}) == doctest::Approx(0.2158605));
}
