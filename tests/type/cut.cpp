#include "type/cut.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

constexpr const char *garamond = "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Regular.otf";

using Opened = std::variant<std::unique_ptr<FaceCut>, std::string>;

Opened opened(const FaceLibrary &library, std::string bytes) {
  auto owner = std::make_shared<const std::string>(std::move(bytes));
  return FaceCut::open(library, {owner, *owner}, "faces/odd.otf", false, 0);
}

std::string refusal(std::string bytes) {
  const FaceLibrary library;
  const Opened cut = opened(library, std::move(bytes));
  const auto *reason = std::get_if<std::string>(&cut);
  return reason == nullptr ? "taken" : *reason;
}

} // namespace

TEST_CASE("what is no OpenType file is refused with the reason") {
  const std::string no_face = "it is not an OpenType file (.otf, .ttf, .otc or .ttc)";
  CHECK(refusal("") == no_face);
  CHECK(refusal("%!PS-AdobeFont-1.0: Odd") == no_face);
  CHECK(refusal("wOFF and more") == no_face);
  CHECK(refusal("OTTO") == "its tables are damaged or cut short");
  CHECK(refusal(file_bytes(garamond).substr(0, 20'000)) == "its tables are damaged or cut short");
}

// From the file's own tables, read by hand: head.unitsPerEm, hhea.ascender and hhea.descender.
TEST_CASE("a cut knows its em and its line") {
  const FaceLibrary library;
  const Opened cut = opened(library, file_bytes(garamond));
  const FaceCut &face = *std::get<std::unique_ptr<FaceCut>>(cut);
  CHECK(face.upem() == 1000);
  CHECK(face.ascender() == 710);
  CHECK(face.descender() == 290);
  CHECK(face.family() == "EB Garamond");
  CHECK_FALSE(face.fixed_width());
  CHECK(face.scaled(500, Length::points(10)) == Length::points(5));
}

// EB Garamond's GSUB lists frac, numr and dnom; Bebas Neue's none of them.
TEST_CASE("a cut knows whether it makes one sign of a fraction") {
  const FaceLibrary library;
  const auto sets = [&](const char *file) {
    const Opened cut = opened(library, file_bytes(file));
    return std::get<std::unique_ptr<FaceCut>>(cut)->sets_fractions();
  };
  CHECK(sets(garamond));
  CHECK_FALSE(sets("/usr/share/fonts/opentype/bebas-neue/BebasNeue-Regular.otf"));
}

TEST_CASE("a damaged file never brings the house down") {
  const std::string whole = file_bytes(garamond);
  const FaceLibrary library;
  std::uint32_t dice = 12345;
  std::size_t taken = 0;
  for (int round = 0; round < 60; ++round) {
    std::string bytes = whole;
    for (int hit = 0; hit < 200; ++hit) {
      dice = dice * 1664525u + 1013904223u;
      bytes[dice % (round < 30 ? 2'000u : static_cast<std::uint32_t>(bytes.size()))] ^=
          static_cast<char>(dice >> 24);
    }
    const Opened cut = opened(library, std::move(bytes));
    const auto *face = std::get_if<std::unique_ptr<FaceCut>>(&cut);
    if (face == nullptr)
      continue;
    ++taken;
    for (std::uint32_t glyph = 0; glyph < 400; ++glyph)
      (*face)->ink(glyph);
  }
  CHECK(taken > 0);
  CHECK(taken < 60);
}

TEST_CASE("glyphs beyond the file's last do not draw") {
  const FaceLibrary library;
  const Opened cut = opened(library, file_bytes(garamond));
  const FaceCut &face = *std::get<std::unique_ptr<FaceCut>>(cut);
  CHECK(face.draws(1));
  CHECK_FALSE(face.draws(65'535));
  CHECK(face.ink(65'535).empty());
}

} // namespace bodkin
