#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/jpeg_codec.hpp"
#include "art/profile.hpp"
#include "art/profiles.hpp"
#include "art/rows.hpp"

#include <algorithm>
#include <vector>

namespace bodkin::art {
namespace {

using namespace std::string_view_literals;

// The largest of the reductions that the transform gives for nothing.
std::int64_t reduction(const Facts &facts, std::int64_t about) {
  std::int64_t by = 1;
  while (about != 0 && by < 8 && facts.width * facts.height / (4 * by * by) >= about)
    by *= 2;
  return by;
}

bool start(JpegReader &reader, std::string_view bytes, std::int64_t reduce_by) {
  if (setjmp(reader.errors.back) != 0)
    return false;
  jpeg_mem_src(&reader.info, octets(bytes), bytes.size());
  jpeg_read_header(&reader.info, TRUE);
  reader.info.scale_num = 1;
  reader.info.scale_denom = static_cast<unsigned>(reduce_by);
  const int components = reader.info.num_components;
  reader.info.out_color_space = components == 1   ? JCS_GRAYSCALE
                                : components == 3 ? JCS_RGB
                                                  : JCS_CMYK;
  return jpeg_start_decompress(&reader.info) != FALSE;
}

bool read_row(JpegReader &reader, std::uint8_t *row) {
  if (setjmp(reader.errors.back) != 0)
    return false;
  return jpeg_read_scanlines(&reader.info, &row, 1) == 1;
}

bool finish(JpegReader &reader) {
  if (setjmp(reader.errors.back) != 0)
    return false;
  return jpeg_finish_decompress(&reader.info) != FALSE;
}

Refusal refused(const JpegReader &reader) {
  return reader.errors.ended_early ? cut_off(Format::jpeg) : damaged(Format::jpeg);
}

// Adobe's programs store how much of each ink is missing.
void invert(std::vector<std::uint8_t> &row) {
  for (std::uint8_t &sample : row)
    sample = static_cast<std::uint8_t>(255 - sample);
}

} // namespace

MaybeRefusal jpeg_rows(std::string_view bytes, const Facts &facts, std::int64_t about,
                       const RowSink &sink) {
  JpegReader reader;
  if (!start(reader, bytes, reduction(facts, about)))
    return refused(reader);
  const auto &info = reader.info;
  constexpr Inks by_components[] = {Inks::grey, Inks::grey, Inks::grey, Inks::rgb, Inks::cmyk};
  const Inks inks = by_components[std::clamp(info.output_components, 0, 4)];
  const RowShape shape{static_cast<int>(info.output_width), static_cast<int>(info.output_height),
                       channels_in_srgb(inks)};
  ToSrgb to_srgb(facts.profile ? jpeg_profile(bytes, *facts.jpeg) : std::string(), inks,
                 shape.width);
  sink.begin(shape);
  std::vector<std::uint8_t> row(static_cast<std::size_t>(shape.width) *
                                static_cast<std::size_t>(info.output_components));
  const bool inverted = inks == Inks::cmyk && info.saw_Adobe_marker != FALSE;
  for (int y = 0; y < shape.height; ++y) {
    if (!read_row(reader, row.data()))
      return refused(reader);
    if (inverted)
      invert(row);
    if (!sink.take(to_srgb.row(row.data())))
      return std::nullopt;
  }
  if (!finish(reader))
    return refused(reader);
  return std::nullopt;
}

// Annex B.4 of ICC.1: numbered pieces, each after "ICC_PROFILE", its number and their count.
std::string jpeg_profile(std::string_view bytes, const JpegHead &head) {
  constexpr std::size_t heading = 18; // marker, length, name, number, count
  std::vector<std::string_view> pieces(256);
  for (const ByteSpan &span : head.kept)
    for (std::size_t at = span.begin; at + 4 <= span.end;) {
      const auto code = big(bytes, at, 2);
      if (code == 0xffd8) {
        at += 2;
        continue;
      }
      if (code == 0xffda || (code & 0xff00) != 0xff00)
        break;
      const auto end = at + 2 + big(bytes, at + 2, 2);
      if (code == 0xffe2 && end >= at + heading && end <= span.end)
        pieces[big(bytes, at + 16, 1)] = bytes.substr(at + heading, end - at - heading);
      at = end;
    }
  std::string profile;
  for (const auto piece : pieces)
    profile += piece;
  return profile;
}

} // namespace bodkin::art
