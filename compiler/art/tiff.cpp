#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/heads.hpp"
#include "art/profile.hpp"
#include "art/profiles.hpp"
#include "art/rows.hpp"

#include <algorithm>
#include <cstring>
#include <fmt/format.h>
#include <memory>
#include <tiffio.h>
#include <vector>

namespace bodkin::art {
namespace {

struct Bytes {
  std::string_view all;
  std::size_t at = 0;
};

tmsize_t read_some(thandle_t handle, void *to, tmsize_t size) {
  auto &bytes = *static_cast<Bytes *>(handle);
  const auto some =
      part(bytes.all, bytes.at, static_cast<std::size_t>(std::max<tmsize_t>(size, 0)));
  std::memcpy(to, some.data(), some.size());
  bytes.at += some.size();
  return static_cast<tmsize_t>(some.size());
}
tmsize_t write_none(thandle_t, void *, tmsize_t) { return 0; }
toff_t seek(thandle_t handle, toff_t offset, int whence) {
  auto &bytes = *static_cast<Bytes *>(handle);
  const std::size_t from = whence == SEEK_SET   ? 0
                           : whence == SEEK_CUR ? bytes.at
                                                : bytes.all.size();
  bytes.at = std::min<std::size_t>(from + offset, bytes.all.size());
  return bytes.at;
}
int close_none(thandle_t) { return 0; }
toff_t size_of(thandle_t handle) { return static_cast<Bytes *>(handle)->all.size(); }
int map_all(thandle_t handle, void **base, toff_t *size) {
  const auto &bytes = *static_cast<Bytes *>(handle);
  *base = const_cast<char *>(bytes.all.data()); // opened for reading only
  *size = bytes.all.size();
  return 1;
}
void unmap_none(thandle_t, void *, toff_t) {}
int be_silent(TIFF *, void *, const char *, const char *, va_list) { return 1; }

struct Close {
  void operator()(TIFF *tiff) const { TIFFClose(tiff); }
};
using Tiff = std::unique_ptr<TIFF, Close>;

Tiff open(Bytes &bytes) {
  TIFFOpenOptions *options = TIFFOpenOptionsAlloc();
  constexpr tmsize_t largest_piece = tmsize_t{1} << 30; // the whole of the largest picture as RGBA
  TIFFOpenOptionsSetMaxSingleMemAlloc(options, largest_piece);
  TIFFOpenOptionsSetErrorHandlerExtR(options, be_silent, nullptr);
  TIFFOpenOptionsSetWarningHandlerExtR(options, be_silent, nullptr);
  Tiff tiff(TIFFClientOpenExt("picture", "r", &bytes, read_some, write_none, seek, close_none,
                              size_of, map_all, unmap_none, options));
  TIFFOpenOptionsFree(options);
  return tiff;
}

template <typename T>
T tag(TIFF *tiff, std::uint32_t name) {
  T value = 0;
  return TIFFGetFieldDefaulted(tiff, name, &value) != 0 ? value : T{0};
}

bool has_alpha(TIFF *tiff) {
  std::uint16_t count = 0;
  std::uint16_t *kinds = nullptr;
  TIFFGetFieldDefaulted(tiff, TIFFTAG_EXTRASAMPLES, &count, &kinds);
  if (count == 0 || kinds == nullptr)
    return false;
  // libtiff, like most programs, takes an unexplained fourth sample for alpha.
  return kinds[0] == EXTRASAMPLE_ASSOCALPHA || kinds[0] == EXTRASAMPLE_UNASSALPHA ||
         tag<std::uint16_t>(tiff, TIFFTAG_SAMPLESPERPIXEL) > 3;
}

bool all_there(TIFF *tiff, std::size_t file_bytes) {
  const auto pieces = TIFFIsTiled(tiff) ? TIFFNumberOfTiles(tiff) : TIFFNumberOfStrips(tiff);
  for (std::uint32_t i = 0; i < pieces; ++i) {
    const auto offset = TIFFGetStrileOffset(tiff, i), size = TIFFGetStrileByteCount(tiff, i);
    if (offset > file_bytes || size > file_bytes - offset)
      return false;
  }
  return true;
}

bool is_grey(std::uint16_t photometric) {
  return photometric == PHOTOMETRIC_MINISBLACK || photometric == PHOTOMETRIC_MINISWHITE;
}

// Rows that are read as they are stored: CMYK, so that it can go through a profile, and 16-bit
// grey, which libtiff's own conversion cuts off instead of rounding. Other arrangements are left to
// that.
bool reads_as_stored(TIFF *tiff) {
  const auto bits = tag<std::uint16_t>(tiff, TIFFTAG_BITSPERSAMPLE);
  const auto photometric = tag<std::uint16_t>(tiff, TIFFTAG_PHOTOMETRIC);
  const auto samples = tag<std::uint16_t>(tiff, TIFFTAG_SAMPLESPERPIXEL);
  const bool cmyk = photometric == PHOTOMETRIC_SEPARATED && samples == 4 &&
                    tag<std::uint16_t>(tiff, TIFFTAG_INKSET) == INKSET_CMYK;
  const bool deep_grey = is_grey(photometric) && samples == 1 && bits == 16;
  return (cmyk || deep_grey) && (bits == 8 || bits == 16) && !TIFFIsTiled(tiff) &&
         tag<std::uint16_t>(tiff, TIFFTAG_PLANARCONFIG) == PLANARCONFIG_CONTIG &&
         tag<std::uint16_t>(tiff, TIFFTAG_SAMPLEFORMAT) == SAMPLEFORMAT_UINT;
}

std::string profile_of(TIFF *tiff) {
  std::uint32_t size = 0;
  void *profile = nullptr;
  if (TIFFGetField(tiff, TIFFTAG_ICCPROFILE, &size, &profile) == 0)
    return {};
  return {static_cast<const char *>(profile), size};
}

Facts facts_of(TIFF *tiff) {
  Facts facts;
  facts.format = Format::tiff;
  facts.width = tag<std::uint32_t>(tiff, TIFFTAG_IMAGEWIDTH);
  facts.height = tag<std::uint32_t>(tiff, TIFFTAG_IMAGELENGTH);
  facts.orientation = orientation_of(tag<std::uint16_t>(tiff, TIFFTAG_ORIENTATION));
  facts.bits = tag<std::uint16_t>(tiff, TIFFTAG_BITSPERSAMPLE);
  const auto photometric = tag<std::uint16_t>(tiff, TIFFTAG_PHOTOMETRIC);
  facts.cmyk = photometric == PHOTOMETRIC_SEPARATED;
  facts.alpha = !facts.cmyk && has_alpha(tiff);
  facts.channels = (is_grey(photometric) ? 1 : facts.cmyk ? 4 : 3) + (facts.alpha ? 1 : 0);
  std::uint32_t size = 0;
  void *profile = nullptr;
  facts.profile = TIFFGetField(tiff, TIFFTAG_ICCPROFILE, &size, &profile) != 0 && size > 0;
  return facts;
}

// One row of eight or sixteen bits a sample, as eight with 0 for black or no ink.
void narrow_row(const std::vector<std::uint8_t> &from, bool wide, bool inverted,
                std::vector<std::uint8_t> &to) {
  for (std::size_t i = 0; i < to.size(); ++i) {
    std::uint16_t sample = from[i];
    if (wide) {
      std::memcpy(&sample, from.data() + 2 * i, 2);
      sample = static_cast<std::uint16_t>((sample + 128) / 257);
    }
    to[i] = static_cast<std::uint8_t>(inverted ? 255 - sample : sample);
  }
}

MaybeRefusal stored_rows(TIFF *tiff, const RowShape &shape, const RowSink &sink) {
  const bool wide = tag<std::uint16_t>(tiff, TIFFTAG_BITSPERSAMPLE) == 16;
  const bool inverted = tag<std::uint16_t>(tiff, TIFFTAG_PHOTOMETRIC) == PHOTOMETRIC_MINISWHITE;
  const Inks inks = shape.channels == 1 ? Inks::grey : Inks::cmyk;
  std::vector<std::uint8_t> narrow(static_cast<std::size_t>(shape.width) *
                                   static_cast<std::size_t>(channels_of(inks)));
  std::vector<std::uint8_t> row(static_cast<std::size_t>(TIFFScanlineSize(tiff)));
  if (row.size() < narrow.size() * (wide ? 2 : 1))
    return damaged(Format::tiff);
  ToSrgb to_srgb(profile_of(tiff), inks, shape.width);
  sink.begin(shape);
  for (int y = 0; y < shape.height; ++y) {
    if (TIFFReadScanline(tiff, row.data(), static_cast<std::uint32_t>(y), 0) != 1)
      return damaged(Format::tiff);
    narrow_row(row, wide, inverted, narrow);
    if (!sink.take(to_srgb.row(narrow.data())))
      return std::nullopt;
  }
  return std::nullopt;
}

// libtiff's packed samples, premultiplied, as channels of ours.
void unpack(const std::uint32_t *from, std::uint8_t *to, const RowShape &shape) {
  for (int x = 0; x < shape.width; ++x, to += shape.channels) {
    const std::uint32_t sample = from[x], alpha = TIFFGetA(sample);
    const bool straight = shape.channels % 2 == 1 || alpha == 255 || alpha == 0;
    const auto channel = [&](std::uint32_t value) {
      return static_cast<std::uint8_t>(
          straight ? value : std::min<std::uint32_t>(255, (value * 255 + alpha / 2) / alpha));
    };
    to[0] = channel(TIFFGetR(sample));
    if (shape.channels >= 3) {
      to[1] = channel(TIFFGetG(sample));
      to[2] = channel(TIFFGetB(sample));
    }
    if (shape.channels % 2 == 0)
      to[shape.channels - 1] = static_cast<std::uint8_t>(alpha);
  }
}

struct RgbaImage {
  TIFFRGBAImage image{};
  bool begun = false;

  explicit RgbaImage(TIFF *tiff) {
    char message[1024] = "";
    begun = TIFFRGBAImageBegin(&image, tiff, 1, message) != 0;
    image.req_orientation = image.orientation; // rows as stored; they are turned later
  }
  RgbaImage(const RgbaImage &) = delete;
  RgbaImage &operator=(const RgbaImage &) = delete;
  ~RgbaImage() {
    if (begun)
      TIFFRGBAImageEnd(&image);
  }
};

MaybeRefusal packed_rows(TIFF *tiff, const RowShape &shape, const RowSink &sink) {
  RgbaImage rgba(tiff);
  if (!rgba.begun)
    return damaged(Format::tiff);
  const auto asked =
      tag<std::uint32_t>(tiff, TIFFIsTiled(tiff) ? TIFFTAG_TILELENGTH : TIFFTAG_ROWSPERSTRIP);
  const int band = static_cast<int>(
      std::clamp<std::uint32_t>(asked, 1, static_cast<std::uint32_t>(shape.height)));
  const auto width = static_cast<std::size_t>(shape.width);
  std::vector<std::uint32_t> raster(width * static_cast<std::size_t>(band));
  std::vector<std::uint8_t> row(width * static_cast<std::size_t>(shape.channels));
  constexpr Inks inks[] = {Inks::grey, Inks::grey_alpha, Inks::rgb, Inks::rgb_alpha};
  ToSrgb to_srgb(profile_of(tiff), inks[shape.channels - 1], shape.width);
  sink.begin(shape);
  for (int top = 0; top < shape.height; top += band) {
    const int rows = std::min(band, shape.height - top);
    rgba.image.row_offset = top;
    if (TIFFRGBAImageGet(&rgba.image, raster.data(), static_cast<std::uint32_t>(width),
                         static_cast<std::uint32_t>(rows)) == 0)
      return damaged(Format::tiff);
    for (int y = 0; y < rows; ++y) {
      unpack(raster.data() + width * static_cast<std::size_t>(y), row.data(), shape);
      if (!sink.take(to_srgb.row(row.data())))
        return std::nullopt;
    }
  }
  return std::nullopt;
}

} // namespace

Outcome<Facts> tiff_head(std::string_view bytes, const Bounds &bounds) {
  Bytes source{bytes, 0};
  const Tiff tiff = open(source);
  if (!tiff) {
    // The directory of a TIFF may stand at its very end.
    const auto order = bytes[0] == 'I' ? ByteOrder::little : ByteOrder::big;
    return number(bytes, 4, 4, order) >= bytes.size() ? cut_off(Format::tiff)
                                                      : damaged(Format::tiff);
  }
  Facts facts = facts_of(tiff.get());
  if (auto refusal = refused_size(static_cast<std::uint64_t>(facts.width),
                                  static_cast<std::uint64_t>(facts.height), Format::tiff, bounds))
    return *refusal;
  char message[1024] = "";
  if (tag<std::uint16_t>(tiff.get(), TIFFTAG_SAMPLESPERPIXEL) > 16 ||
      (!reads_as_stored(tiff.get()) && TIFFRGBAImageOK(tiff.get(), message) == 0))
    return Refusal{Trouble::unreadable,
                   fmt::format("is a TIFF of {} bits in {} channels, arranged in a way that is not "
                               "read; save it with 8 bits a channel, grey or RGB",
                               facts.bits,
                               tag<std::uint16_t>(tiff.get(), TIFFTAG_SAMPLESPERPIXEL))};
  if (!all_there(tiff.get(), bytes.size()))
    return cut_off(Format::tiff);
  if (facts.orientation.swaps_edges())
    std::swap(facts.width, facts.height);
  return facts;
}

MaybeRefusal tiff_rows(std::string_view bytes, const Facts &, const RowSink &sink) {
  Bytes source{bytes, 0};
  const Tiff tiff = open(source);
  if (!tiff)
    return damaged(Format::tiff);
  const Facts facts = facts_of(tiff.get());
  RowShape shape{static_cast<int>(facts.width), static_cast<int>(facts.height), facts.channels};
  if (facts.cmyk)
    shape.channels = 3;
  return reads_as_stored(tiff.get()) ? stored_rows(tiff.get(), shape, sink)
                                     : packed_rows(tiff.get(), shape, sink);
}

std::string tiff_profile(std::string_view bytes) {
  Bytes source{bytes, 0};
  const Tiff tiff = open(source);
  return tiff ? profile_of(tiff.get()) : std::string();
}

} // namespace bodkin::art
