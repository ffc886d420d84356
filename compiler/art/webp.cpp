#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/exif.hpp"
#include "art/heads.hpp"
#include "art/profile.hpp"
#include "art/profiles.hpp"
#include "art/rows.hpp"

#include <memory>
#include <webp/decode.h>
#include <webp/demux.h>

namespace bodkin::art {
namespace {

struct Delete {
  void operator()(WebPDemuxer *demuxer) const { WebPDemuxDelete(demuxer); }
};

// A chunk of the container beside the image: "ICCP", "EXIF".
std::string chunk(std::string_view bytes, const char *name) {
  const WebPData file{octets(bytes), bytes.size()};
  const std::unique_ptr<WebPDemuxer, Delete> demuxer(WebPDemux(&file));
  WebPChunkIterator found{};
  std::string held;
  if (demuxer && WebPDemuxGetChunk(demuxer.get(), name, 1, &found) != 0)
    held.assign(reinterpret_cast<const char *>(found.chunk.bytes), found.chunk.size);
  WebPDemuxReleaseChunkIterator(&found);
  return held;
}

struct Picture {
  WebPDecoderConfig config{};
  bool ready = WebPInitDecoderConfig(&config) != 0;

  Picture() = default;
  Picture(const Picture &) = delete;
  Picture &operator=(const Picture &) = delete;
  ~Picture() { WebPFreeDecBuffer(&config.output); }
};

Refusal refused(VP8StatusCode status) {
  return status == VP8_STATUS_NOT_ENOUGH_DATA || status == VP8_STATUS_SUSPENDED
             ? cut_off(Format::webp)
             : damaged(Format::webp);
}

} // namespace

Outcome<Facts> webp_head(std::string_view bytes, const Bounds &bounds) {
  if (little(bytes, 4, 4) + 8 > bytes.size())
    return cut_off(Format::webp);
  WebPBitstreamFeatures features{};
  const auto status = WebPGetFeatures(octets(bytes), bytes.size(), &features);
  if (status != VP8_STATUS_OK)
    return refused(status);
  if (features.has_animation != 0)
    return Refusal{Trouble::unknown_kind, "is a moving WebP; save one picture of it as PNG"};
  Facts facts;
  facts.format = Format::webp;
  facts.width = features.width;
  facts.height = features.height;
  facts.alpha = features.has_alpha != 0;
  facts.channels = facts.alpha ? 4 : 3;
  if (auto refusal = refused_size(static_cast<std::uint64_t>(facts.width),
                                  static_cast<std::uint64_t>(facts.height), Format::webp, bounds))
    return *refusal;
  facts.profile = !chunk(bytes, "ICCP").empty();
  facts.orientation = exif_orientation(chunk(bytes, "EXIF"));
  if (facts.orientation.swaps_edges())
    std::swap(facts.width, facts.height);
  return facts;
}

MaybeRefusal webp_rows(std::string_view bytes, const Facts &facts, const RowSink &sink) {
  Picture picture;
  if (!picture.ready)
    return damaged(Format::webp);
  picture.config.output.colorspace = facts.alpha ? MODE_RGBA : MODE_RGB;
  const auto status = WebPDecode(octets(bytes), bytes.size(), &picture.config);
  if (status != VP8_STATUS_OK)
    return refused(status);
  const WebPDecBuffer &out = picture.config.output;
  const RowShape shape{out.width, out.height, facts.alpha ? 4 : 3};
  ToSrgb to_srgb(facts.profile ? webp_profile(bytes) : std::string(),
                 facts.alpha ? Inks::rgb_alpha : Inks::rgb, shape.width);
  sink.begin(shape);
  for (int y = 0; y < shape.height; ++y)
    if (!sink.take(
            to_srgb.row(out.u.RGBA.rgba + static_cast<std::ptrdiff_t>(y) * out.u.RGBA.stride)))
      break;
  return std::nullopt;
}

std::string webp_profile(std::string_view bytes) { return chunk(bytes, "ICCP"); }

} // namespace bodkin::art
