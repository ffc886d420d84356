#include "art/inspect.hpp"

#include "art/coloured.hpp"
#include "art/drawing.hpp"
#include "art/heads.hpp"
#include "art/sniff.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::art {
namespace {

// A million samples: on a page, some 150 an inch.
constexpr std::int64_t judged_samples = std::int64_t{1} << 20;

Outcome<Facts> drawing_facts(std::string_view bytes, Format format, int page,
                             const Bounds &bounds) {
  auto drawn = sketch(bytes, format, page, judged_samples, bounds);
  if (!drawn)
    return drawn.refusal();
  Facts facts;
  facts.format = format;
  facts.alpha = true;
  facts.channels = 4;
  DrawingHead &head = drawn->head;
  const PixelView pixels = drawn->pixels();
  head.coloured = coloured(pixels);
  head.ink = ink_hull_rounded_out(pixels);
  head.luminance = luminance_grid(pixels);
  facts.drawing = std::move(head);
  return facts;
}

Outcome<Facts> raster_facts(std::string_view bytes, Format format, const Bounds &bounds) {
  switch (format) {
  case Format::png:
    return png_head(bytes, bounds);
  case Format::jpeg:
    return jpeg_head(bytes, bounds);
  case Format::tiff:
    return tiff_head(bytes, bounds);
  case Format::webp:
    return webp_head(bytes, bounds);
  default:
    return heic_head(bytes, bounds);
  }
}

std::int64_t samples_before(std::int64_t millionths, int edge) {
  return (millionths * edge + 500'000) / 1'000'000;
}

} // namespace

double Facts::aspect() const {
  if (drawing)
    return static_cast<double>(drawing->natural.width.units()) /
           static_cast<double>(drawing->natural.height.units());
  return static_cast<double>(width) / static_cast<double>(height);
}

Outcome<Facts> inspect(std::string_view bytes, int page, const Bounds &bounds) {
  if (bytes.size() > bounds.picture_bytes)
    return Refusal{Trouble::too_big,
                   fmt::format("holds {} MB; a picture of more than {} MB is not read",
                               bytes.size() >> 20, bounds.picture_bytes >> 20)};
  const auto format = sniff(bytes);
  if (!format)
    return format.refusal();
  if (page != 1 && *format != Format::pdf)
    return Refusal{Trouble::no_such_page,
                   fmt::format("is one {}; only a PDF has pages to choose from",
                               *format == Format::svg ? "drawing" : "picture")};
  if (*format == Format::svg || *format == Format::pdf)
    return drawing_facts(bytes, *format, page, bounds);
  return raster_facts(bytes, *format, bounds);
}

SampleBox samples_within(int width, int height, const std::optional<Crop> &crop) {
  if (!crop)
    return {0, 0, width, height};
  const auto along = [](Share from, Share size, int edge) {
    const auto begin = std::clamp<std::int64_t>(samples_before(from.millionths, edge), 0, edge - 1);
    const auto end = std::clamp<std::int64_t>(
        samples_before(from.millionths + size.millionths, edge), begin + 1, edge);
    return std::pair(static_cast<int>(begin), static_cast<int>(end));
  };
  const auto [left, right] = along(crop->x, crop->width, width);
  const auto [top, bottom] = along(crop->y, crop->height, height);
  return {left, top, right, bottom};
}

SampleCount samples_after(const Facts &facts, const std::optional<Crop> &crop) {
  if (facts.is_drawing())
    return {};
  const auto box =
      samples_within(static_cast<int>(facts.width), static_cast<int>(facts.height), crop);
  return {box.right - box.left, box.bottom - box.top};
}

} // namespace bodkin::art
