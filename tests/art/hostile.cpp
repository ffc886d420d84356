// Files cut off, bent or made to do harm: each ends in a refusal, none in a crash.
#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;
using namespace std::string_view_literals;

namespace {

struct Kinds {
  Folder folder;
  std::vector<std::string> files;

  Kinds() {
    folder.write("in.ppm", ppm(motley()));
    folder.run("convert in.ppm a.png && convert in.ppm -interlace PNG b.png &&"
               " convert in.ppm c.jpg && convert in.ppm -interlace JPEG d.jpg &&"
               " convert in.ppm -compress LZW e.tif && cwebp -quiet a.png -o f.webp &&"
               " cwebp -quiet -lossless a.png -o g.webp && convert in.ppm -resize 64x64! h.png &&"
               " heif-enc -o h.heic h.png >heif.log 2>&1");
    for (const char *name :
         {"a.png", "b.png", "c.jpg", "d.jpg", "e.tif", "f.webp", "g.webp", "h.heic"})
      files.push_back(folder.read(name));
  }
};

// Numerical Recipes' linear congruence: the same bends each time.
struct Dice {
  std::uint32_t state = 1;
  std::uint32_t next() { return state = state * 1'664'525 + 1'013'904'223; }
};

} // namespace

TEST_CASE("a raster picture cut off anywhere is refused") {
  const Kinds kinds;
  for (const std::string &file : kinds.files) {
    REQUIRE(reason_of(file) == "was read");
    const bool is_tiff = file.substr(0, 2) == "II";
    // HEIC is decoded in a child process, so each cut costs more.
    const std::size_t step = std::max<std::size_t>(1, file.size() / 97);
    for (std::size_t bytes = 16; bytes < file.size(); bytes += step) {
      CAPTURE(bytes);
      const std::string cut = file.substr(0, bytes);
      // The last bytes of a TIFF may be facts that no decoder needs.
      if (is_tiff && reason_of(cut) == "was read")
        CHECK(loaded(cut) == loaded(file));
      else
        CHECK(reason_of(cut) != "was read");
    }
    const auto most = inspect(std::string_view(file).substr(0, file.size() - (is_tiff ? 200 : 9)));
    REQUIRE_FALSE(most);
    // Not every decoder tells a missing end from damage.
    const Trouble trouble = most.refusal().trouble;
    CHECK((trouble == Trouble::cut_off || trouble == Trouble::unreadable));
  }
}

TEST_CASE("a JPEG whose coded data end too soon is refused though its last marker is there") {
  const Kinds kinds;
  const std::string &file = kinds.files[2];
  CHECK(reason_of(file.substr(0, file.size() - 200) + "\xff\xd9") ==
        "breaks off before the end of its JPEG; copy it again whole");
}

TEST_CASE("bent bytes are read or refused, never more") {
  const Kinds kinds;
  Dice dice;
  int refused = 0;
  Bounds bounds;
  bounds.samples = 1'000'000;
  for (std::size_t kind = 0; kind + 1 < kinds.files.size(); ++kind)
    for (int i = 0; i < 300; ++i) {
      std::string file = kinds.files[kind];
      for (int k = 0; k < 4; ++k)
        file[dice.next() % file.size()] = static_cast<char>(dice.next() >> 24);
      refused += reason_of(file, 1, bounds) == "was read" ? 0 : 1;
    }
  CHECK(refused > 500);
}

TEST_CASE("random bytes are no picture") {
  Dice dice;
  std::string noise;
  for (int i = 0; i < 4096; ++i)
    noise += static_cast<char>(dice.next() >> 24);
  CHECK(reason_of(noise) ==
        "is no picture that can be placed: PNG, JPEG, TIFF, WebP, HEIC, SVG and PDF can");
  for (const std::string_view head :
       {"\x89PNG\r\n\x1a\n"sv, "\xff\xd8\xff"sv, "II*\0"sv, "MM\0*"sv, "RIFF\x10\0\0\0WEBP"sv,
        "\0\0\0\x18"
        "ftypheic"sv,
        "%PDF-1.4"sv, "<svg "sv})
    CHECK(reason_of(std::string(head) + noise) != "was read");
}

TEST_CASE("a head that promises too much is refused before anything is made ready for it") {
  const std::string png("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\1\x86\xa0\0\1\x86\xa0\x08\2\0\0\0\0\0\0\0",
                        33);
  CHECK(reason_of(png) == "promises 100000 x 100000 samples; 80 million in all, 100000 along an "
                          "edge, are the most that are read");
  const Kinds kinds;
  std::string jpeg = kinds.files[2];
  jpeg.replace(jpeg.find("\xff\xc0") + 5, 4, "\xff\xff\xff\xff");
  CHECK(reason_of(jpeg) == "promises 65535 x 65535 samples; 268 million in all, 100000 along an "
                           "edge, are the most that are read");
  Bounds small;
  small.samples = 800;
  for (const std::string &file : kinds.files) {
    const auto facts = inspect(file, 1, small);
    REQUIRE_FALSE(facts);
    CHECK(facts.refusal().trouble == Trouble::too_big);
  }
  small.picture_bytes = 10;
  CHECK(inspect(png, 1, small).refusal().trouble == Trouble::too_big);
}

TEST_CASE("a drawing of too many bytes is not opened") {
  Bounds bounds;
  bounds.drawing_bytes = 20;
  CHECK(inspect("<svg width='9' height='9'></svg>", 1, bounds).refusal().trouble ==
        Trouble::too_big);
}
