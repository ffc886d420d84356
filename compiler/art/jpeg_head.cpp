// The markers of a JPEG (ITU-T T.81, annex B), walked from start to end; of its image data only the
// bytes 0xff are looked for.
#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/exif.hpp"
#include "art/heads.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace bodkin::art {
namespace {

using namespace std::string_view_literals;

enum Code : std::uint8_t {
  dht = 0xc4,
  jpg = 0xc8,
  dac = 0xcc,
  soi = 0xd8,
  eoi = 0xd9,
  sos = 0xda,
  app0 = 0xe0,
  app1 = 0xe1,
  app2 = 0xe2,
  app14 = 0xee,
  app15 = 0xef,
  com = 0xfe,
};

bool is_frame(std::uint8_t code) {
  return code >= 0xc0 && code <= 0xcf && code != dht && code != jpg && code != dac;
}
bool stands_alone(std::uint8_t code) { return code == 0x01 || (code >= 0xd0 && code <= 0xd7); }

struct Walk {
  std::string_view bytes;
  std::size_t at = 0;
  Facts facts;
  JpegHead head;
  bool framed = false, scanned = false, jfif = false;
  std::array<char, 3> ids{};
};

void keep(Walk &walk, std::size_t begin, std::size_t end) {
  auto &kept = walk.head.kept;
  if (!kept.empty() && kept.back().end == begin)
    kept.back().end = end;
  else
    kept.push_back({begin, end});
}

bool take_frame(Walk &walk, std::uint8_t code, std::string_view body) {
  const std::size_t components = big(body, 5, 1);
  if (walk.framed || body.size() < 6 + 3 * components)
    return false;
  walk.framed = true;
  Facts &facts = walk.facts;
  facts.bits = static_cast<int>(big(body, 0, 1));
  facts.height = static_cast<std::int64_t>(big(body, 1, 2));
  facts.width = static_cast<std::int64_t>(big(body, 3, 2));
  facts.channels = static_cast<int>(components);
  facts.cmyk = components == 4;
  for (std::size_t i = 0; i < components && i < walk.ids.size(); ++i)
    walk.ids[i] = body[6 + 3 * i];
  // DCTDecode takes baseline, extended and progressive Huffman-coded images of eight bits.
  walk.head.passes = code <= 0xc2 && facts.bits == 8;
  return true;
}

// What decoding needs is kept; what a camera or an owner wrote is not.
bool is_kept(Walk &walk, std::uint8_t code, std::string_view body) {
  if (code == com)
    return false;
  if (code < app0 || code > app15)
    return true;
  if (code == app0) {
    constexpr std::size_t without_thumbnail = 14;
    const bool jfif = body.substr(0, 5) == "JFIF\0"sv;
    walk.jfif = walk.jfif || jfif;
    return jfif && body.size() <= without_thumbnail;
  }
  if (code == app1 && body.substr(0, 6) == "Exif\0\0"sv && walk.facts.orientation.upright())
    walk.facts.orientation = exif_orientation(body);
  if (code == app2 && body.substr(0, 12) == "ICC_PROFILE\0"sv) {
    walk.facts.profile = true;
    return true;
  }
  if (code == app14 && body.substr(0, 5) == "Adobe" && body.size() >= 12) {
    walk.head.adobe = true;
    walk.head.adobe_transform = static_cast<int>(big(body, 11, 1));
    return true;
  }
  return false;
}

// Whether some byte 0xff of a block is followed by anything but a stuffed zero: nearly no block of
// coded data has one, so that they go by at the speed of memory. One byte beyond the block is read.
constexpr std::size_t block = 64;
bool holds_marker(const char *bytes) {
  std::uint8_t found = 0;
  for (std::size_t i = 0; i < block; ++i)
    found = static_cast<std::uint8_t>(
        found | (static_cast<int>(bytes[i] == '\xff') & static_cast<int>(bytes[i + 1] != 0)));
  return found != 0;
}

// The end of the coded data that begin at `at`: the next marker that is neither a stuffed zero nor
// a restart.
std::optional<std::size_t> end_of_scan(std::string_view bytes, std::size_t at) {
  while (at + 1 < bytes.size()) {
    if (at + block < bytes.size() && !holds_marker(bytes.data() + at)) {
      at += block;
      continue;
    }
    const std::size_t beyond = std::min(at + block, bytes.size() - 1);
    for (; at < beyond; ++at) {
      const auto next = static_cast<std::uint8_t>(bytes[at + 1]);
      const bool coded = bytes[at] != '\xff' || next == 0 || next == 0xff;
      if (!coded && !stands_alone(next))
        return at;
    }
  }
  return std::nullopt;
}

// How libjpeg tells YCbCr from RGB, and where PDF readers (PDF 1.7, table 13) would tell otherwise.
void settle_colour(Walk &walk) {
  JpegHead &head = walk.head;
  if (walk.facts.channels != 3)
    return;
  const bool rgb_ids = walk.ids == std::array{'R', 'G', 'B'};
  head.luma_first = walk.jfif || (head.adobe ? head.adobe_transform != 0 : !rgb_ids);
  const bool reader_sees_ycc = !head.adobe || head.adobe_transform != 0;
  head.passes = head.passes && head.luma_first == reader_sees_ycc;
}

// One marker and its body. False at the end of the image, a refusal where it is not whole.
Outcome<bool> step(Walk &walk) {
  const std::size_t begin = walk.at;
  if (begin + 2 > walk.bytes.size())
    return cut_off(Format::jpeg);
  if (static_cast<std::uint8_t>(walk.bytes[begin]) != 0xff)
    return damaged(Format::jpeg);
  const auto code = static_cast<std::uint8_t>(walk.bytes[begin + 1]);
  if (code == 0xff || stands_alone(code)) { // fill bytes may stand before a marker
    walk.at += code == 0xff ? 1 : 2;
    return true;
  }
  if (code == eoi) {
    keep(walk, begin, begin + 2);
    return false;
  }
  const std::size_t length = big(walk.bytes, begin + 2, 2);
  if (code == soi || code == 0 || (length < 2 && begin + 4 <= walk.bytes.size()))
    return damaged(Format::jpeg);
  std::size_t end = begin + 2 + length;
  if (begin + 4 > walk.bytes.size() || end > walk.bytes.size())
    return cut_off(Format::jpeg);
  const auto body = walk.bytes.substr(begin + 4, length - 2);
  if (is_frame(code) && !take_frame(walk, code, body))
    return damaged(Format::jpeg);
  const bool kept = is_kept(walk, code, body);
  if (code == sos) {
    walk.scanned = true;
    const auto scan_end = end_of_scan(walk.bytes, end);
    if (!scan_end)
      return cut_off(Format::jpeg);
    end = *scan_end;
  }
  if (kept)
    keep(walk, begin, end);
  // No encoder comes near; a file made of nothing but markers would fill memory with their places.
  constexpr std::size_t most_pieces = 10'000;
  if (walk.head.kept.size() > most_pieces)
    return damaged(Format::jpeg);
  walk.at = end;
  return true;
}

} // namespace

Outcome<Facts> jpeg_head(std::string_view bytes, const Bounds &bounds) {
  Walk walk;
  walk.bytes = bytes;
  walk.facts.format = Format::jpeg;
  keep(walk, 0, 2);
  walk.at = 2;
  for (bool more = true; more;) {
    const auto stepped = step(walk);
    if (!stepped)
      return stepped.refusal();
    more = *stepped;
  }
  Facts &facts = walk.facts;
  if (!walk.framed || !walk.scanned)
    return damaged(Format::jpeg);
  if (auto refusal = refused_size(static_cast<std::uint64_t>(facts.width),
                                  static_cast<std::uint64_t>(facts.height), Format::jpeg, bounds))
    return *refusal;
  if (facts.channels != 1 && facts.channels != 3 && facts.channels != 4)
    return damaged(Format::jpeg);
  if (facts.bits != 8)
    return Refusal{Trouble::unreadable, "is a JPEG of 12 bits a channel; save it as TIFF"};
  settle_colour(walk);
  if (facts.orientation.swaps_edges())
    std::swap(facts.width, facts.height);
  facts.jpeg = std::move(walk.head);
  return std::move(facts);
}

} // namespace bodkin::art
