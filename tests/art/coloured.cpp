#include "art/coloured.hpp"

#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

Pixels grey_field(int width, int height, std::uint8_t value) {
  Pixels pixels{width, height, 3, {}};
  pixels.samples.assign(pixels.stride() * static_cast<std::size_t>(height), value);
  return pixels;
}

bool judged(const std::string &file, const Tone &tone = {}, const std::optional<Crop> &crop = {}) {
  const auto outcome = coloured(file, facts_of(file), tone, crop);
  REQUIRE(outcome);
  return *outcome;
}

} // namespace

TEST_CASE("one sample in ten thousand is not colour yet, two are") {
  Pixels field = grey_field(200, 100, 128);
  CHECK_FALSE(coloured(field));
  field.samples[0] = 137; // 9 apart
  field.samples[300] = 137;
  CHECK_FALSE(coloured(field)); // 2 of 20,000
  field.samples[600] = 137;
  CHECK(coloured(field));
  field.samples[600] = 136; // 8 apart
  CHECK_FALSE(coloured(field));
}

TEST_CASE("a file is judged in its crop, the way up that it is seen") {
  const Folder folder;
  Pixels field = grey_field(40, 20, 200);
  for (int y = 0; y < 4; ++y) // red in the top left corner as stored
    for (int x = 0; x < 4; ++x)
      field.row(y)[3 * x] = 255;
  folder.write("in.ppm", ppm(field));
  for (int way = 1; way <= 8; ++way) {
    CAPTURE(way);
    folder.run("convert in.ppm a.tif && exiftool -q -overwrite_original -n -Orientation=" +
               std::to_string(way) + " a.tif && convert a.tif -auto-orient seen.png");
    const std::string stored = folder.read("a.tif"), seen = folder.read("seen.png");
    for (const Crop &crop :
         {Crop{{0}, {0}, {300'000}, {300'000}}, Crop{{700'000}, {0}, {300'000}, {300'000}},
          Crop{{0}, {700'000}, {300'000}, {300'000}},
          Crop{{700'000}, {700'000}, {300'000}, {300'000}}})
      CHECK(judged(stored, {}, crop) == judged(seen, {}, crop));
    CHECK(judged(stored));
  }
}

TEST_CASE("grey and line tones take the colour out") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm a.png");
  CHECK(judged(folder.read("a.png")));
  CHECK_FALSE(judged(folder.read("a.png"), Tone{ToneKind::grey, {}}));
  CHECK_FALSE(judged(folder.read("a.png"), Tone{ToneKind::line, {500'000}}));
}

TEST_CASE("colour that alpha hides is no colour") {
  CHECK_FALSE(coloured(Pixels{1, 1, 4, {255, 0, 0, 0}}));
  CHECK_FALSE(coloured(Pixels{1, 1, 4, {255, 0, 0, 8}}));
  CHECK(coloured(Pixels{1, 1, 4, {255, 0, 0, 9}}));
}

TEST_CASE("a grey photograph stored as colour is grey, a drawing with one red line is coloured") {
  const Folder folder;
  folder.run("convert -size 300x200 plasma:black-white -colorspace Gray -set colorspace sRGB "
             "-type TrueColor -quality 85 g.jpg");
  CHECK(facts_of(folder.read("g.jpg")).channels == 3);
  CHECK_FALSE(judged(folder.read("g.jpg")));
  const std::string begin = "<svg xmlns='http://www.w3.org/2000/svg' width='100' height='100'>";
  CHECK_FALSE(judged(begin + "<rect width='50' height='50' fill='#777'/></svg>"));
  CHECK(judged(begin + "<path d='M0 0L100 100' stroke='red'/></svg>"));
}
