#include "art/svg.hpp"

#include "art/checks.hpp"
#include "art/drawing.hpp"
#include "art/sniff.hpp"
#include "art/svg_mentions.hpp"

#include <algorithm>
#include <cairo-pdf.h>
#include <cmath>
#include <fmt/format.h>
#include <librsvg/rsvg.h>
#include <string>

namespace bodkin::art {
namespace {

constexpr double pixels_an_inch = 96, points_a_pixel = 72 / pixels_an_inch; // CSS

struct FreeError {
  void operator()(GError *error) const { g_error_free(error); }
};

// Neither a base folder nor a loader is given, so librsvg opens nothing but these bytes.
SvgDrawing::Handle parse(std::string_view bytes) {
  GError *error = nullptr;
  SvgDrawing::Handle handle(rsvg_handle_new_from_data(
      reinterpret_cast<const guint8 *>(bytes.data()), bytes.size(), &error));
  const std::unique_ptr<GError, FreeError> owned(error);
  if (handle)
    rsvg_handle_set_dpi(handle.get(), pixels_an_inch);
  return handle;
}

struct SvgSize {
  double width = 0, height = 0; // CSS pixels
  bool usable() const {
    constexpr double most = 1e6; // some 260 m
    return std::isfinite(width) && std::isfinite(height) && width > 0 && height > 0 &&
           width < most && height < most;
  }
};

// Width and height as written, else the viewBox.
SvgSize size_of(RsvgHandle *handle) {
  SvgSize size;
  if (rsvg_handle_get_intrinsic_size_in_pixels(handle, &size.width, &size.height) != 0 &&
      size.usable())
    return size;
  gboolean has_width = 0, has_height = 0, has_box = 0;
  RsvgLength width{}, height{};
  RsvgRectangle box{};
  rsvg_handle_get_intrinsic_dimensions(handle, &has_width, &width, &has_height, &height, &has_box,
                                       &box);
  return has_box != 0 ? SvgSize{box.width, box.height} : SvgSize{};
}

// What Cairo makes of the drawing on a PDF page is the only sure sign of what became samples.
struct PdfWatch {
  std::string last;
  bool images = false;
};

cairo_status_t watch(void *closure, const unsigned char *bytes, unsigned size) {
  constexpr std::string_view sign = "/Subtype /Image";
  auto &seen = *static_cast<PdfWatch *>(closure);
  seen.last.append(reinterpret_cast<const char *>(bytes), size);
  seen.images = seen.images || seen.last.find(sign) != std::string::npos;
  if (seen.last.size() > sign.size())
    seen.last.erase(0, seen.last.size() - sign.size());
  return CAIRO_STATUS_SUCCESS;
}

bool becomes_samples(const SvgDrawing &drawing) {
  constexpr double longest = 600; // points; a page's worth
  const double scale = longest / std::max(drawing.width(), drawing.height());
  PdfWatch seen;
  cairo_surface_t *surface =
      cairo_pdf_surface_create_for_stream(watch, &seen, std::max(1.0, drawing.width() * scale),
                                          std::max(1.0, drawing.height() * scale));
  cairo_t *cairo = cairo_create(surface);
  cairo_scale(cairo, drawing.width() * scale, drawing.height() * scale);
  drawing.draw(cairo);
  cairo_destroy(cairo);
  cairo_surface_finish(surface);
  cairo_surface_destroy(surface);
  return seen.images;
}

// RFC 4648; characters of no meaning are passed over, as librsvg does.
std::string from_base64(std::string_view text) {
  constexpr std::string_view alphabet =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string bytes;
  bytes.reserve(text.size() / 4 * 3);
  std::uint32_t held = 0;
  int bits = 0;
  for (const char c : text) {
    const std::size_t value = alphabet.find(c);
    if (value == std::string_view::npos)
      continue;
    held = (held << 6) | static_cast<std::uint32_t>(value);
    if (bits += 6; bits >= 8) {
      bits -= 8;
      bytes += static_cast<char>((held >> bits) & 0xFF);
    }
  }
  return bytes;
}

// Samples that pictures within the drawing promise: librsvg holds all of each at once.
std::int64_t samples_embedded(const std::vector<std::string_view> &references) {
  constexpr std::string_view mark = "base64,";
  std::int64_t samples = 0;
  for (const std::string_view reference : references) {
    const std::size_t at = reference.find(mark);
    if (at == std::string_view::npos)
      continue;
    const std::string picture = from_base64(reference.substr(at + mark.size()));
    const auto format = sniff(picture);
    if (!format || *format == Format::svg || *format == Format::pdf)
      continue;
    const auto facts = inspect(picture);
    if (facts)
      samples += facts->width * facts->height;
    else if (facts.refusal().trouble == Trouble::too_big)
      samples += limits::embedded_samples + 1;
  }
  return samples;
}

bool ends(std::string_view bytes) {
  const auto last = bytes.find_last_not_of(std::string_view(" \t\r\n\0", 5));
  return last != std::string_view::npos && bytes[last] == '>';
}

} // namespace

void SvgDrawing::Close::operator()(_RsvgHandle *handle) const { g_object_unref(handle); }

bool SvgDrawing::draw(_cairo *cairo) const {
  cairo_save(cairo);
  cairo_rectangle(cairo, 0, 0, 1, 1);
  cairo_clip(cairo);
  cairo_scale(cairo, 1 / width_, 1 / height_);
  const RsvgRectangle viewport{0, 0, width_, height_};
  GError *error = nullptr;
  const bool drawn = rsvg_handle_render_document(handle_.get(), cairo, &viewport, &error) != 0;
  const std::unique_ptr<GError, FreeError> owned(error);
  cairo_restore(cairo);
  return drawn;
}

Outcome<SvgDrawing> open_svg(std::string_view bytes) {
  const auto mentions = svg_mentions(bytes);
  if (!mentions.outside.empty())
    return Refusal{
        Trouble::leads_outside,
        fmt::format("asks for something outside itself ({}); a drawing must hold all that "
                    "it shows: embed it in the drawing",
                    mentions.outside)};
  if (samples_embedded(mentions.embedded) > limits::embedded_samples)
    return Refusal{Trouble::too_big,
                   fmt::format("holds pictures of more than {} million samples; place them as "
                               "pictures of their own",
                               limits::embedded_samples / 1'000'000)};
  auto handle = parse(bytes);
  if (!handle)
    return ends(bytes) ? damaged(Format::svg) : cut_off(Format::svg);
  const SvgSize size = size_of(handle.get());
  if (!size.usable())
    return Refusal{Trouble::unreadable,
                   "says neither its width and height nor its viewBox, so nobody knows its shape"};
  return SvgDrawing(std::move(handle), size.width, size.height);
}

void try_svg(std::string_view bytes, std::int64_t about, const Trial &trial) {
  const auto drawing = open_svg(bytes);
  if (!drawing)
    return refuse(trial.head(), drawing.refusal());
  TrialHead &head = trial.head();
  head.natural_width = drawing->width() * points_a_pixel;
  head.natural_height = drawing->height() * points_a_pixel;
  leave_samples(trial, about, [&](cairo_t *cairo) { return drawing->draw(cairo); });
  head.rasterised_parts = !head.refused && becomes_samples(*drawing);
}

} // namespace bodkin::art
