// The chunks of a PNG (ISO/IEC 15948), walked without looking into the image data.
#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/exif.hpp"
#include "art/heads.hpp"

namespace bodkin::art {
namespace {

bool take_header(std::string_view chunk, Facts &facts) {
  facts.width = static_cast<std::int64_t>(big(chunk, 0, 4));
  facts.height = static_cast<std::int64_t>(big(chunk, 4, 4));
  facts.bits = static_cast<int>(big(chunk, 8, 1));
  const auto kind = big(chunk, 9, 1);
  constexpr std::uint64_t grey = 0, rgb = 2, palette = 3, grey_alpha = 4, rgb_alpha = 6;
  facts.alpha = kind == grey_alpha || kind == rgb_alpha;
  switch (kind) {
  case grey:
    facts.channels = 1;
    return true;
  case grey_alpha:
    facts.channels = 2;
    return true;
  case rgb:
  case palette:
    facts.channels = 3;
    return true;
  case rgb_alpha:
    facts.channels = 4;
    return true;
  default:
    return false;
  }
}

} // namespace

Outcome<Facts> png_head(std::string_view bytes, const Bounds &bounds) {
  Facts facts;
  facts.format = Format::png;
  constexpr std::size_t signature = 8, frame = 12; // length, name and check sum round each chunk
  bool ended = false, imaged = false;
  for (std::size_t at = signature; !ended;) {
    const std::size_t length = big(bytes, at, 4);
    if (at + frame > bytes.size() || length > bytes.size() - at - frame)
      return at == signature ? damaged(Format::png) : cut_off(Format::png);
    const auto name = part(bytes, at + 4, 4), chunk = part(bytes, at + 8, length);
    if (at == signature) {
      if (name != "IHDR" || length != 13 || !take_header(chunk, facts))
        return damaged(Format::png);
      if (auto refusal = refused_size(big(chunk, 0, 4), big(chunk, 4, 4), Format::png, bounds))
        return *refusal;
    } else if (name == "tRNS" && !facts.alpha) {
      facts.alpha = true;
      ++facts.channels;
    } else if (name == "iCCP") {
      facts.profile = true;
    } else if (name == "eXIf") {
      facts.orientation = exif_orientation(chunk);
    }
    imaged = imaged || name == "IDAT";
    ended = name == "IEND";
    at += length + frame;
  }
  if (!imaged)
    return damaged(Format::png);
  if (facts.orientation.swaps_edges())
    std::swap(facts.width, facts.height);
  return facts;
}

} // namespace bodkin::art
