#include "art/drawing.hpp"

#include "art/checks.hpp"

#include <algorithm>
#include <cairo.h>
#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace bodkin::art {
namespace {

struct DestroySurface {
  void operator()(cairo_surface_t *surface) const { cairo_surface_destroy(surface); }
};
struct DestroyCairo {
  void operator()(cairo_t *cairo) const { cairo_destroy(cairo); }
};

struct Shape {
  int width, height;
};

Shape shape_of(const TrialHead &head, std::int64_t about) {
  constexpr double widest = 16'384; // Cairo's images end at 32,767
  const double samples = static_cast<double>(about),
               aspect = head.natural_width / head.natural_height;
  const double width = std::clamp(std::sqrt(samples * aspect), 1.0, widest);
  const double height = std::clamp(samples / width, 1.0, widest);
  return {static_cast<int>(std::min(width, samples / std::floor(height))),
          static_cast<int>(height)};
}

// Cairo keeps colour multiplied by alpha, in words of the machine's own byte order. Where nothing
// is drawn `to` stays as it is: zero, and untouched memory costs nothing.
void unpack(const std::uint32_t *from, std::uint8_t *to, int width) {
  for (int x = 0; x < width; ++x, to += 4) {
    const std::uint32_t alpha = from[x] >> 24;
    if (alpha == 0)
      continue;
    for (int c = 0; c < 3; ++c) {
      const std::uint32_t value = from[x] >> (16 - 8 * c) & 0xff;
      to[c] = static_cast<std::uint8_t>(
          alpha == 255 ? value : std::min<std::uint32_t>(255, (value * 255 + alpha / 2) / alpha));
    }
    to[3] = static_cast<std::uint8_t>(alpha);
  }
}

DrawingHead head_of(const TrialHead &tried) {
  DrawingHead head;
  head.natural = {Length::nearest_points(tried.natural_width),
                  Length::nearest_points(tried.natural_height)};
  head.pages = tried.pages;
  head.page_box = {tried.page_box[0], tried.page_box[1], tried.page_box[2], tried.page_box[3]};
  head.rotate = tried.rotate;
  head.rasterised_parts = tried.rasterised_parts;
  return head;
}

} // namespace

void leave_samples(const Trial &trial, std::int64_t about,
                   const std::function<bool(_cairo *)> &draw) {
  const Shape shape = shape_of(trial.head(), about);
  const std::unique_ptr<cairo_surface_t, DestroySurface> surface(
      cairo_image_surface_create(CAIRO_FORMAT_ARGB32, shape.width, shape.height));
  const std::unique_ptr<cairo_t, DestroyCairo> cairo(cairo_create(surface.get()));
  cairo_scale(cairo.get(), shape.width, shape.height);
  const bool drawn = draw(cairo.get());
  cairo_surface_flush(surface.get());
  if (!drawn || cairo_status(cairo.get()) != CAIRO_STATUS_SUCCESS)
    return refuse(trial.head(),
                  {Trouble::unreadable, "is damaged and cannot be drawn; save it anew"});
  const unsigned char *rows = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  for (int y = 0; y < shape.height; ++y)
    unpack(reinterpret_cast<const std::uint32_t *>(rows + static_cast<std::ptrdiff_t>(y) * stride),
           trial.samples().data() + std::ptrdiff_t{4} * y * shape.width, shape.width);
  trial.head().width = shape.width;
  trial.head().height = shape.height;
}

Outcome<Sketch> sketch(std::string_view bytes, Format format, int page, std::int64_t about,
                       const Bounds &bounds) {
  if (bytes.size() > bounds.drawing_bytes)
    return Refusal{Trouble::too_big, fmt::format("holds {} MB; a drawing of more than {} MB is not "
                                                 "read",
                                                 bytes.size() >> 20, bounds.drawing_bytes >> 20)};
  about = std::clamp<std::int64_t>(about, 1, bounds.samples);
  auto tried = try_out(bounds, static_cast<std::size_t>(about) * 4, [&](const Trial &trial) {
    if (format == Format::svg)
      try_svg(bytes, about, trial);
    else
      try_pdf(bytes, page, about, trial);
  });
  if (!tried)
    return tried.refusal();
  const TrialHead &head = tried->head();
  // The child has had a hostile file in its hands: what it says is looked at before it is believed.
  if (head.width < 1 || head.height < 1 ||
      std::int64_t{4} * head.width >
          static_cast<std::int64_t>(tried->samples().size()) / head.height)
    return damaged(format);
  DrawingHead said = head_of(head);
  return Sketch{std::move(said), std::move(*tried)};
}

PixelView Sketch::pixels() const {
  return {trial.head().width, trial.head().height, 4, trial.samples().data()};
}

} // namespace bodkin::art
