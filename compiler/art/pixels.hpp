// Pictures in memory, ready to place: eight bits a channel in sRGB (IEC 61966-2-1), rows from the
// top as seen, no gaps between rows.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace bodkin::art {

// Samples that somebody else owns.
struct PixelView {
  int width = 0, height = 0;
  int channels = 3; // as in Pixels
  const std::uint8_t *samples = nullptr;

  bool coloured_channels() const { return channels >= 3; }
  bool has_alpha() const { return channels == 2 || channels == 4; }
  std::size_t stride() const {
    return static_cast<std::size_t>(width) * static_cast<std::size_t>(channels);
  }
  const std::uint8_t *row(int y) const { return samples + stride() * static_cast<std::size_t>(y); }
};

struct Pixels {
  int width = 0, height = 0;
  int channels =
      3; // 1 grey, 2 grey and alpha, 3 red green blue, 4 with alpha (never premultiplied)
  std::vector<std::uint8_t> samples; // width × height × channels

  bool coloured_channels() const { return channels >= 3; }
  bool has_alpha() const { return channels == 2 || channels == 4; }
  std::size_t stride() const {
    return static_cast<std::size_t>(width) * static_cast<std::size_t>(channels);
  }
  const std::uint8_t *row(int y) const {
    return samples.data() + stride() * static_cast<std::size_t>(y);
  }
  std::uint8_t *row(int y) { return samples.data() + stride() * static_cast<std::size_t>(y); }
  operator PixelView() const { return {width, height, channels, samples.data()}; }
  bool operator==(const Pixels &) const = default;
};

// One bit a sample, 1 is ink, the leftmost in the highest bit, rows padded to whole bytes with 0.
struct Bits {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rows;

  std::size_t stride() const { return (static_cast<std::size_t>(width) + 7) / 8; }
  bool ink(int x, int y) const {
    const auto byte =
        rows[stride() * static_cast<std::size_t>(y) + static_cast<std::size_t>(x) / 8];
    return ((byte >> (7 - x % 8)) & 1) != 0;
  }
  bool operator==(const Bits &) const = default;
};

} // namespace bodkin::art
