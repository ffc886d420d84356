// Decoding, a row at a time: what load, coloured and ink have in common. Rows come as stored, from
// the first in the file on, already in sRGB and eight bits.
#pragma once

#include "art/inspect.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>

namespace bodkin::art {

struct RowShape {
  int width = 0, height = 0; // as stored
  int channels = 3;          // as in Pixels
};

struct RowSink {
  std::function<void(const RowShape &)> begin;       // once, before the first row
  std::function<bool(const std::uint8_t *row)> take; // false: enough, stop without reading on
};

using MaybeRefusal = std::optional<Refusal>;

// `about` lets a JPEG be decoded at 1/2, 1/4 or 1/8 while that still gives so many samples; 0
// forbids.
MaybeRefusal rows_of(std::string_view bytes, const Facts &facts, std::int64_t about,
                     const Bounds &bounds, const RowSink &sink);

MaybeRefusal png_rows(std::string_view bytes, const Facts &facts, const Bounds &bounds,
                      const RowSink &sink);
MaybeRefusal jpeg_rows(std::string_view bytes, const Facts &facts, std::int64_t about,
                       const RowSink &sink);
MaybeRefusal tiff_rows(std::string_view bytes, const Facts &facts, const RowSink &sink);
MaybeRefusal webp_rows(std::string_view bytes, const Facts &facts, const RowSink &sink);
MaybeRefusal heic_rows(std::string_view bytes, const Facts &facts, const Bounds &bounds,
                       const RowSink &sink);

} // namespace bodkin::art
