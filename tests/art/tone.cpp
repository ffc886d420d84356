// Reference: the formula of IEC 61966-2-1 and ITU-R BT.709 as measure/few.hpp has it, itself held
// against Little CMS there; ImageMagick's Rec709Luminance.
#include "art/tone.hpp"

#include "art/tools.hpp"
#include "measure/few.hpp"

#include <cmath>
#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

TEST_CASE("grey is luminance in the sRGB curve") {
  const Pixels in = motley();
  const Pixels out = grey(in);
  CHECK(out.channels == 1);
  Pixels right{in.width, in.height, 1, {}};
  for (std::size_t i = 0; i < in.samples.size(); i += 3)
    right.samples.push_back(static_cast<std::uint8_t>(
        std::lround(255 * grey_of(Colour{in.samples[i], in.samples[i + 1], in.samples[i + 2]}))));
  CHECK(out == right);
  const Folder folder;
  folder.write("in.ppm", ppm(in));
  CHECK(furthest(samples_of(out), folder.converted("in.ppm",
                                                   "-grayscale Rec709Luminance "
                                                   "-set colorspace LinearGray "
                                                   "-colorspace Gray",
                                                   "gray")) <= 1);
}

TEST_CASE("a grey in three channels stays the same grey") {
  Pixels in{256, 1, 3, {}}, out{256, 1, 1, {}};
  for (int v = 0; v < 256; ++v) {
    in.samples.insert(in.samples.end(), 3, static_cast<std::uint8_t>(v));
    out.samples.push_back(static_cast<std::uint8_t>(v));
  }
  CHECK(grey(in) == out);
}

TEST_CASE("line art is ink where the picture over white paper is darker than its threshold") {
  const Pixels in{10, 1, 2, {0, 255, 127, 255, 128, 255, 255, 255, 0,   0,
                             0, 128, 0,   127, 200, 255, 100, 255, 126, 255}};
  const Bits bits = line_art(in, Share{500'000});
  CHECK(bits.rows == std::vector<std::uint8_t>{0b11000'100, 0b11'000000});
  CHECK(line_art(in, Share{0}).rows == std::vector<std::uint8_t>{0, 0});
  CHECK(line_art(in, Share{1'000'000}).rows == std::vector<std::uint8_t>{0b11100'111, 0b11'000000});
}

TEST_CASE("alpha laid on white is what a browser shows") {
  CHECK(on_white(Pixels{2, 1, 4, {10, 20, 30, 0, 0, 100, 200, 51}}) ==
        Pixels{2, 1, 3, {255, 255, 255, 204, 224, 244}});
}

TEST_CASE("a crop keeps its part") {
  const Pixels in{4, 2, 1, {1, 2, 3, 4, 5, 6, 7, 8}};
  CHECK(cropped(in, Crop{{250'000}, {500'000}, {500'000}, {500'000}}) == Pixels{2, 1, 1, {6, 7}});
  CHECK(cropped(in, {}) == in);
}
