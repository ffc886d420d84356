// PNG by libpng. It leaves its calls by longjmp, so each call stands in a small function of its own
// that has nothing to destroy, and all that must live on stands in the Decoder.
#include "art/checks.hpp"
#include "art/profile.hpp"
#include "art/profiles.hpp"
#include "art/rows.hpp"

#include <algorithm>
#include <csetjmp>
#include <cstring>
#include <memory>
#include <png.h>
#include <string>
#include <vector>

namespace bodkin::art {
namespace {

struct Decoder {
  std::string_view left;
  bool ended_early = false;
  png_structp png = nullptr;
  png_infop info = nullptr;
  std::string_view profile;

  Decoder() = default;
  Decoder(const Decoder &) = delete;
  Decoder &operator=(const Decoder &) = delete;
  ~Decoder() { png_destroy_read_struct(&png, &info, nullptr); }
};

void feed(png_structp png, png_bytep to, std::size_t size) {
  auto &decoder = *static_cast<Decoder *>(png_get_io_ptr(png));
  if (size > decoder.left.size()) {
    decoder.ended_early = true;
    png_error(png, "short");
  }
  std::memcpy(to, decoder.left.data(), size);
  decoder.left.remove_prefix(size);
}

[[noreturn]] void leave(png_structp png, png_const_charp) { png_longjmp(png, 1); }
void pass_over(png_structp, png_const_charp) {}

bool open(Decoder &decoder, const Bounds &bounds) {
  decoder.png = png_create_read_struct(PNG_LIBPNG_VER_STRING, nullptr, leave, pass_over);
  decoder.info = decoder.png != nullptr ? png_create_info_struct(decoder.png) : nullptr;
  if (decoder.info == nullptr || setjmp(png_jmpbuf(decoder.png)) != 0)
    return false;
  png_set_read_fn(decoder.png, &decoder, feed);
  const auto edge = static_cast<png_uint_32>(bounds.edge);
  png_set_user_limits(decoder.png, edge, edge);
  constexpr png_alloc_size_t largest_chunk = 32u << 20; // of a profile or a palette
  png_set_chunk_malloc_max(decoder.png, largest_chunk);
  png_read_info(decoder.png, decoder.info);
  png_set_expand(decoder.png);
  png_set_scale_16(decoder.png);
  png_set_interlace_handling(decoder.png);
  png_charp name = nullptr;
  png_bytep profile = nullptr;
  png_uint_32 size = 0;
  int method = 0;
  if (png_get_iCCP(decoder.png, decoder.info, &name, &method, &profile, &size) != 0)
    decoder.profile = {reinterpret_cast<const char *>(profile), size};
  png_read_update_info(decoder.png, decoder.info);
  return true;
}

bool read_row(Decoder &decoder, std::uint8_t *row) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0)
    return false;
  png_read_row(decoder.png, row, nullptr);
  return true;
}

bool read_all(Decoder &decoder, std::uint8_t **rows) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0)
    return false;
  png_read_image(decoder.png, rows);
  return true;
}

bool read_end(Decoder &decoder) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0)
    return false;
  png_read_end(decoder.png, nullptr);
  return true;
}

Inks inks_of(int channels) {
  constexpr Inks inks[] = {Inks::grey, Inks::grey_alpha, Inks::rgb, Inks::rgb_alpha};
  return inks[std::clamp(channels, 1, 4) - 1];
}

Refusal refused(const Decoder &decoder) {
  return decoder.ended_early ? cut_off(Format::png) : damaged(Format::png);
}

// Rows of an interlaced picture are whole only when all seven passes are read.
MaybeRefusal interlaced_rows(Decoder &decoder, const RowShape &shape, ToSrgb &to_srgb,
                             const RowSink &sink) {
  const std::size_t stride = png_get_rowbytes(decoder.png, decoder.info);
  std::vector<std::uint8_t> samples(stride * static_cast<std::size_t>(shape.height));
  std::vector<std::uint8_t *> rows(static_cast<std::size_t>(shape.height));
  for (std::size_t y = 0; y < rows.size(); ++y)
    rows[y] = samples.data() + stride * y;
  if (!read_all(decoder, rows.data()))
    return refused(decoder);
  for (const std::uint8_t *row : rows)
    if (!sink.take(to_srgb.row(row)))
      return std::nullopt;
  return std::nullopt;
}

} // namespace

MaybeRefusal png_rows(std::string_view bytes, const Facts &, const Bounds &bounds,
                      const RowSink &sink) {
  Decoder decoder;
  decoder.left = bytes;
  if (!open(decoder, bounds))
    return refused(decoder);
  const auto width = png_get_image_width(decoder.png, decoder.info);
  const auto height = png_get_image_height(decoder.png, decoder.info);
  if (auto refusal = refused_size(width, height, Format::png, bounds))
    return refusal;
  const int channels = png_get_channels(decoder.png, decoder.info);
  const RowShape shape{static_cast<int>(width), static_cast<int>(height), channels};
  ToSrgb to_srgb(decoder.profile, inks_of(channels), shape.width);
  sink.begin(shape);
  if (png_get_interlace_type(decoder.png, decoder.info) != PNG_INTERLACE_NONE) {
    if (auto refusal = interlaced_rows(decoder, shape, to_srgb, sink))
      return refusal;
  } else {
    std::vector<std::uint8_t> row(png_get_rowbytes(decoder.png, decoder.info));
    for (int y = 0; y < shape.height; ++y) {
      if (!read_row(decoder, row.data()))
        return refused(decoder);
      if (!sink.take(to_srgb.row(row.data())))
        return std::nullopt;
    }
  }
  if (!read_end(decoder))
    return refused(decoder);
  return std::nullopt;
}

std::string png_profile(std::string_view bytes) {
  Decoder decoder;
  decoder.left = bytes;
  return open(decoder, {}) ? std::string(decoder.profile) : std::string();
}

} // namespace bodkin::art
