#include "art/tone.hpp"

#include "art/inspect.hpp"
#include "measure/few.hpp"

#include <array>
#include <cmath>
#include <utility>

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

} // namespace

void grey_row(const std::uint8_t *from, int width, int channels, std::uint8_t *to) {
  const Tables &t = tables();
  const int kept = channels - 2;
  for (int x = 0; x < width; ++x, from += channels, to += kept) {
    const std::uint8_t alpha = from[channels - 1];
    to[0] = grey_sample(from, t);
    if (kept == 2)
      to[1] = alpha;
  }
}

// In the same memory: the grey of a sample never lies behind the sample itself.
Pixels grey(Pixels pixels) {
  if (!pixels.coloured_channels())
    return pixels;
  const int channels = pixels.channels;
  std::uint8_t *const samples = pixels.samples.data();
  pixels.channels -= 2;
  for (int y = 0; y < pixels.height; ++y)
    grey_row(samples + static_cast<std::size_t>(y) * static_cast<std::size_t>(pixels.width) *
                           static_cast<std::size_t>(channels),
             pixels.width, channels, pixels.row(y));
  pixels.samples.resize(pixels.stride() * static_cast<std::size_t>(pixels.height));
  return pixels;
}

Pixels on_white(Pixels pixels) {
  if (!pixels.has_alpha())
    return pixels;
  const int colours = pixels.channels - 1;
  const std::uint8_t *from = pixels.samples.data();
  const std::uint8_t *const end = from + pixels.samples.size();
  std::uint8_t *to = pixels.samples.data();
  for (; from != end; from += pixels.channels, to += colours) {
    const std::uint8_t alpha = from[colours];
    for (int c = 0; c < colours; ++c)
      to[c] = over_white(from[c], alpha);
  }
  pixels.channels = colours;
  pixels.samples.resize(pixels.stride() * static_cast<std::size_t>(pixels.height));
  return pixels;
}

Bits line_art(Pixels pixels, Share threshold) {
  const Pixels flat = grey(on_white(std::move(pixels)));
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

Pixels cropped(Pixels pixels, const std::optional<Crop> &crop) {
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
