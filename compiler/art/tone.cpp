#include "art/tone.hpp"

#include "art/inspect.hpp"
#include "measure/few.hpp"

#include <array>
#include <cmath>

namespace bodkin::art {
namespace {

// Linear light of each channel times its weight, in 1/2^24, and the way back from 1/2^16.
struct Tables {
  std::array<std::uint32_t, 256> red{}, green{}, blue{};
  std::array<std::uint8_t, 65'537> encoded{};
};

double encode(double linear) {
  return linear <= 0.0031308 ? linear * 12.92 : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

const Tables &tables() {
  static const Tables made = [] {
    Tables t;
    constexpr double whole = 1 << 24;
    for (std::size_t v = 0; v < 256; ++v) {
      const auto c = static_cast<std::uint8_t>(v);
      t.red[v] = static_cast<std::uint32_t>(std::lround(whole * luminance(Colour{c, 0, 0})));
      t.green[v] = static_cast<std::uint32_t>(std::lround(whole * luminance(Colour{0, c, 0})));
      t.blue[v] = static_cast<std::uint32_t>(std::lround(whole * luminance(Colour{0, 0, c})));
    }
    for (std::size_t i = 0; i < t.encoded.size(); ++i)
      t.encoded[i] =
          static_cast<std::uint8_t>(std::lround(255 * encode(static_cast<double>(i) / 65'536)));
    return t;
  }();
  return made;
}

std::uint8_t grey_sample(const std::uint8_t *rgb, const Tables &t) {
  return t.encoded[(t.red[rgb[0]] + t.green[rgb[1]] + t.blue[rgb[2]] + 128) >> 8];
}

std::uint8_t over_white(std::uint8_t value, std::uint8_t alpha) {
  return static_cast<std::uint8_t>((value * alpha + 255 * (255 - alpha) + 127) / 255);
}

Pixels blank(const Pixels &like, int channels) {
  Pixels made{like.width, like.height, channels, {}};
  made.samples.resize(made.stride() * static_cast<std::size_t>(made.height));
  return made;
}

} // namespace

Pixels grey(const Pixels &pixels) {
  if (!pixels.coloured_channels())
    return pixels;
  const Tables &t = tables();
  Pixels made = blank(pixels, pixels.channels - 2);
  const std::uint8_t *from = pixels.samples.data();
  std::uint8_t *to = made.samples.data();
  const std::uint8_t *const end = from + pixels.samples.size();
  for (; from != end; from += pixels.channels, to += made.channels) {
    to[0] = grey_sample(from, t);
    if (made.channels == 2)
      to[1] = from[3];
  }
  return made;
}

Pixels on_white(const Pixels &pixels) {
  if (!pixels.has_alpha())
    return pixels;
  Pixels made = blank(pixels, pixels.channels - 1);
  const std::uint8_t *from = pixels.samples.data();
  std::uint8_t *to = made.samples.data();
  const std::uint8_t *const end = from + pixels.samples.size();
  for (; from != end; from += pixels.channels, to += made.channels)
    for (int c = 0; c < made.channels; ++c)
      to[c] = over_white(from[c], from[made.channels]);
  return made;
}

Bits line_art(const Pixels &pixels, Share threshold) {
  const Pixels flat = grey(on_white(pixels));
  Bits bits{flat.width, flat.height, {}};
  bits.rows.resize(bits.stride() * static_cast<std::size_t>(bits.height));
  // Ink where grey < limit, in whole steps of 255.
  const std::int64_t limit = (threshold.millionths * 255 + 999'999) / 1'000'000;
  for (int y = 0; y < flat.height; ++y) {
    const std::uint8_t *from = flat.row(y);
    std::uint8_t *to = bits.rows.data() + bits.stride() * static_cast<std::size_t>(y);
    for (int x = 0; x < flat.width; ++x)
      if (from[x] < limit)
        to[x / 8] = static_cast<std::uint8_t>(to[x / 8] | 0x80 >> x % 8);
  }
  return bits;
}

Pixels cropped(const Pixels &pixels, const std::optional<Crop> &crop) {
  if (!crop)
    return pixels;
  const SampleBox box = samples_within(pixels.width, pixels.height, crop);
  Pixels made{box.right - box.left, box.bottom - box.top, pixels.channels, {}};
  made.samples.reserve(made.stride() * static_cast<std::size_t>(made.height));
  for (int y = box.top; y < box.bottom; ++y) {
    const std::uint8_t *from = pixels.row(y) + std::ptrdiff_t{box.left} * pixels.channels;
    made.samples.insert(made.samples.end(), from, from + made.stride());
  }
  return made;
}

} // namespace bodkin::art
