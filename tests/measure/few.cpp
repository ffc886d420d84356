#include "measure/few.hpp"

#include <doctest/doctest.h>
#include <lcms2.h>
#include <memory>

using namespace bodkin;

namespace {

constexpr Colour black{0, 0, 0}, white{255, 255, 255};

struct CurveFree {
  void operator()(cmsToneCurve *curve) const { cmsFreeToneCurve(curve); }
};

// Little CMS's parametric curve of type 4 with the parameters of IEC 61966-2-1.
std::unique_ptr<cmsToneCurve, CurveFree> srgb_curve() {
  const double parameters[] = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
  return std::unique_ptr<cmsToneCurve, CurveFree>(
      cmsBuildParametricToneCurve(nullptr, 4, parameters));
}

} // namespace

TEST_CASE("the luminance of every grey is the linear light that Little CMS makes of it") {
  const auto curve = srgb_curve();
  REQUIRE(curve);
  for (int level = 0; level < 256; ++level) {
    const auto grey = static_cast<std::uint8_t>(level);
    CAPTURE(level);
    const float light = cmsEvalToneCurveFloat(curve.get(), static_cast<float>(level / 255.0));
    CHECK(luminance({grey, grey, grey}) == doctest::Approx(light).epsilon(1e-4));
  }
}

// ITU-R BT.709.
TEST_CASE("red, green and blue weigh 0.2126, 0.7152 and 0.0722") {
  CHECK(luminance({255, 0, 0}) == doctest::Approx(0.2126));
  CHECK(luminance({0, 255, 0}) == doctest::Approx(0.7152));
  CHECK(luminance({0, 0, 255}) == doctest::Approx(0.0722));
  CHECK(luminance(white) == doctest::Approx(1.0));
  CHECK(luminance(black) == 0.0);
}

TEST_CASE("the grey of a colour has the colour's luminance") {
  CHECK(grey_of({119, 119, 119}) == doctest::Approx(119 / 255.0));
  CHECK(grey_of(black) == 0.0);
  const auto curve = srgb_curve();
  for (const Colour colour : {Colour{255, 0, 0}, Colour{0xf6, 0xa5, 0xb8}, Colour{1, 2, 3}}) {
    const float light = cmsEvalToneCurveFloat(curve.get(), static_cast<float>(grey_of(colour)));
    CHECK(luminance(colour) == doctest::Approx(light).epsilon(1e-4));
  }
}

// Web Content Accessibility Guidelines 2, values from memory: black on white 21 : 1, #777777 4.48,
// #767676 4.54.
TEST_CASE("contrasts are those that are published") {
  CHECK(contrast(luminance(black), luminance(white)) == doctest::Approx(21.0));
  CHECK(contrast(luminance(white), luminance({0x77, 0x77, 0x77})) ==
        doctest::Approx(4.48).epsilon(0.002));
  CHECK(contrast(luminance(white), luminance({0x76, 0x76, 0x76})) ==
        doctest::Approx(4.54).epsilon(0.002));
}

TEST_CASE("contrast does not ask which one lies on top") {
  CHECK(contrast(0.2, 0.6) == contrast(0.6, 0.2));
  CHECK(contrast(0.3, 0.3) == 1.0);
}

TEST_CASE("shares, dates and colours are written as they are typed") {
  CHECK(written(Share{85'000}) == "8.5%");
  CHECK(written(Share{1'000'000}) == "100%");
  CHECK(written(Date{2026, 0, 0}) == "2026");
  CHECK(written(Date{2026, 11, 0}) == "2026-11");
  CHECK(written(Date{2026, 3, 5}) == "2026-03-05");
  CHECK(written(Colour{0xf6, 0xa5, 0x08}) == "#f6a508");
}
