// HEIC (ISO/IEC 23008-12) by libheif, which turns and mirrors pictures as the file asks.
#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/heads.hpp"
#include "art/profile.hpp"
#include "art/profiles.hpp"
#include "art/rows.hpp"
#include "art/trial.hpp"

#include <cstring>
#include <libheif/heif.h>
#include <memory>

namespace bodkin::art {
namespace {

struct FreeContext {
  void operator()(heif_context *context) const { heif_context_free(context); }
};
struct ReleaseHandle {
  void operator()(heif_image_handle *handle) const { heif_image_handle_release(handle); }
};
struct ReleaseImage {
  void operator()(heif_image *image) const { heif_image_release(image); }
};
using Context = std::unique_ptr<heif_context, FreeContext>;
using Handle = std::unique_ptr<heif_image_handle, ReleaseHandle>;
using Image = std::unique_ptr<heif_image, ReleaseImage>;

struct Opened {
  Context context;
  Handle handle;
};

Opened open(std::string_view bytes) {
  Opened opened{Context(heif_context_alloc()), nullptr};
  const auto read = heif_context_read_from_memory_without_copy(opened.context.get(), bytes.data(),
                                                               bytes.size(), nullptr);
  heif_image_handle *handle = nullptr;
  if (read.code == heif_error_Ok &&
      heif_context_get_primary_image_handle(opened.context.get(), &handle).code == heif_error_Ok)
    opened.handle.reset(handle);
  return opened;
}

// The boxes at the top of the file (ISO/IEC 14496-12, 4.2) reach to its end and not past it.
bool whole(std::string_view bytes) {
  std::size_t at = 0;
  while (at + 8 <= bytes.size()) {
    std::uint64_t size = big(bytes, at, 4);
    if (size == 1)
      size = big(bytes, at + 8, 8);
    if (size == 0) // reaches to the end of the file
      return true;
    if (size < 8 || size > bytes.size() - at)
      return false;
    at += size;
  }
  return at == bytes.size();
}

void decode(const Opened &opened, bool alpha, const Trial &trial) {
  heif_image *decoded = nullptr;
  const auto chroma = alpha ? heif_chroma_interleaved_RGBA : heif_chroma_interleaved_RGB;
  if (heif_decode_image(opened.handle.get(), &decoded, heif_colorspace_RGB, chroma, nullptr).code !=
      heif_error_Ok)
    return refuse(trial.head(), damaged(Format::heic));
  const Image image(decoded);
  const int width = heif_image_get_width(decoded, heif_channel_interleaved);
  const int height = heif_image_get_height(decoded, heif_channel_interleaved);
  int stride = 0;
  const auto *plane = heif_image_get_plane_readonly(decoded, heif_channel_interleaved, &stride);
  const std::size_t row = static_cast<std::size_t>(width) * (alpha ? 4 : 3);
  // The head may have promised another size than the coded picture has.
  if (plane == nullptr || row * static_cast<std::size_t>(height) != trial.samples().size())
    return refuse(trial.head(), damaged(Format::heic));
  for (int y = 0; y < height; ++y)
    std::memcpy(trial.samples().data() + row * static_cast<std::size_t>(y),
                plane + static_cast<std::ptrdiff_t>(y) * stride, row);
  trial.head().width = width;
  trial.head().height = height;
}

std::string profile_of(heif_image_handle *handle) {
  std::string profile(heif_image_handle_get_raw_color_profile_size(handle), '\0');
  if (profile.empty() ||
      heif_image_handle_get_raw_color_profile(handle, profile.data()).code != heif_error_Ok)
    return {};
  return profile;
}

} // namespace

Outcome<Facts> heic_head(std::string_view bytes, const Bounds &bounds) {
  if (!whole(bytes))
    return cut_off(Format::heic);
  const Opened opened = open(bytes);
  if (!opened.handle)
    return damaged(Format::heic);
  Facts facts;
  facts.format = Format::heic;
  facts.width = heif_image_handle_get_width(opened.handle.get());
  facts.height = heif_image_handle_get_height(opened.handle.get());
  if (facts.width <= 0 || facts.height <= 0)
    return damaged(Format::heic);
  if (auto refusal = refused_size(static_cast<std::uint64_t>(facts.width),
                                  static_cast<std::uint64_t>(facts.height), Format::heic, bounds))
    return *refusal;
  facts.alpha = heif_image_handle_has_alpha_channel(opened.handle.get()) != 0;
  facts.channels = facts.alpha ? 4 : 3;
  facts.bits = heif_image_handle_get_luma_bits_per_pixel(opened.handle.get());
  facts.profile = heif_image_handle_get_raw_color_profile_size(opened.handle.get()) > 0;
  return facts;
}

MaybeRefusal heic_rows(std::string_view bytes, const Facts &facts, const Bounds &bounds,
                       const RowSink &sink) {
  const Opened opened = open(bytes);
  if (!opened.handle)
    return damaged(Format::heic);
  const RowShape shape{static_cast<int>(facts.width), static_cast<int>(facts.height),
                       facts.channels};
  const std::size_t stride =
      static_cast<std::size_t>(shape.width) * static_cast<std::size_t>(shape.channels);
  const auto trial = try_out(bounds, stride * static_cast<std::size_t>(shape.height),
                             [&](const Trial &t) { decode(opened, facts.alpha, t); });
  if (!trial)
    return trial.refusal();
  ToSrgb to_srgb(profile_of(opened.handle.get()), facts.alpha ? Inks::rgb_alpha : Inks::rgb,
                 shape.width);
  sink.begin(shape);
  for (int y = 0; y < shape.height; ++y)
    if (!sink.take(to_srgb.row(trial->samples().data() + stride * static_cast<std::size_t>(y))))
      break;
  return std::nullopt;
}

std::string heic_profile(std::string_view bytes) {
  const Opened opened = open(bytes);
  return opened.handle ? profile_of(opened.handle.get()) : std::string();
}

} // namespace bodkin::art
