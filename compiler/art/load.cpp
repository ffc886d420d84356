#include "art/load.hpp"

#include "art/drawing.hpp"
#include "art/profiles.hpp"
#include "art/reduce.hpp"
#include "art/rows.hpp"
#include "art/tone.hpp"

#include <cstring>
#include <optional>
#include <vector>

namespace bodkin::art {
namespace {

Pixels turned_upright(Pixels stored, Orientation orientation) {
  if (orientation.upright())
    return stored;
  Pixels seen{stored.width, stored.height, stored.channels, {}};
  if (orientation.swaps_edges())
    std::swap(seen.width, seen.height);
  seen.samples.resize(stored.samples.size());
  const auto channels = static_cast<std::size_t>(stored.channels);
  for (int y = 0; y < stored.height; ++y) {
    const std::uint8_t *from = stored.row(y);
    for (int x = 0; x < stored.width; ++x, from += channels) {
      const Seen at = seen_at(orientation, x, y, stored.width, stored.height);
      std::memcpy(seen.row(at.y) + static_cast<std::size_t>(at.x) * channels, from, channels);
    }
  }
  return seen;
}

} // namespace

Outcome<Pixels> load_grey(std::string_view bytes, const Facts &facts, std::int64_t about, int page,
                          const Bounds &bounds) {
  if (facts.is_drawing()) {
    auto drawn = load(bytes, facts, about, page, bounds);
    return drawn ? Outcome<Pixels>(grey(std::move(*drawn))) : drawn;
  }
  std::optional<Reduction> reduction;
  std::vector<std::uint8_t> grey;
  RowShape shape;
  const RowSink sink{[&](const RowShape &stored) {
                       shape = stored;
                       RowShape kept = stored;
                       kept.channels = stored.channels >= 3 ? stored.channels - 2 : stored.channels;
                       reduction.emplace(kept, about);
                       grey.resize(static_cast<std::size_t>(stored.width) * 2);
                     },
                     [&](const std::uint8_t *row) {
                       if (shape.channels >= 3)
                         grey_row(row, shape.width, shape.channels, grey.data());
                       reduction->take(shape.channels >= 3 ? grey.data() : row);
                       return true;
                     }};
  if (auto refusal = rows_of(bytes, facts, about, bounds, sink))
    return *refusal;
  return turned_upright(reduction->finish(), facts.orientation);
}

Outcome<Pixels> load(std::string_view bytes, const Facts &facts, std::int64_t about, int page,
                     const Bounds &bounds) {
  if (facts.is_drawing()) {
    constexpr std::int64_t a_million = 1'000'000;
    auto drawn =
        sketch(bytes, facts.format, page, about == all_samples ? a_million : about, bounds);
    if (!drawn)
      return drawn.refusal();
    const PixelView seen = drawn->pixels();
    return Pixels{seen.width, seen.height, seen.channels, {seen.samples, seen.row(seen.height)}};
  }
  std::optional<Reduction> reduction;
  const RowSink sink{[&](const RowShape &shape) { reduction.emplace(shape, about); },
                     [&](const std::uint8_t *row) {
                       reduction->take(row);
                       return true;
                     }};
  if (auto refusal = rows_of(bytes, facts, about, bounds, sink))
    return *refusal;
  return turned_upright(reduction->finish(), facts.orientation);
}

std::string icc_profile(std::string_view bytes, const Facts &facts) {
  if (!facts.profile)
    return {};
  switch (facts.format) {
  case Format::png:
    return png_profile(bytes);
  case Format::jpeg:
    return jpeg_profile(bytes, *facts.jpeg);
  case Format::tiff:
    return tiff_profile(bytes);
  case Format::webp:
    return webp_profile(bytes);
  case Format::heic:
    return heic_profile(bytes);
  case Format::svg:
  case Format::pdf:
    break;
  }
  return {};
}

} // namespace bodkin::art
