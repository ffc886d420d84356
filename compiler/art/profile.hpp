// Rows in the colours of an embedded ICC profile, made sRGB.
#pragma once

#include <cstdint>
#include <memory>
#include <string_view>
#include <vector>

namespace bodkin::art {

enum class Inks { grey, grey_alpha, rgb, rgb_alpha, cmyk };
int channels_of(Inks inks);
// Grey stays grey and alpha stays alpha; CMYK becomes RGB.
int channels_in_srgb(Inks inks);

class ToSrgb {
public:
  // A profile that cannot be read, or is of other inks, is passed over. CMYK counts full ink as
  // 255.
  ToSrgb(std::string_view profile, Inks inks, int width);

  // Good until the next call, or as long as `row` is where nothing needs doing.
  const std::uint8_t *row(const std::uint8_t *row);

private:
  struct Drop {
    void operator()(void *transform) const;
  };
  Inks inks_;
  int width_;
  std::unique_ptr<void, Drop> transform_;
  std::vector<std::uint8_t> out_;
};

} // namespace bodkin::art
