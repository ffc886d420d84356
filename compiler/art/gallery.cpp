#include "art/gallery.hpp"

#include "art/coloured.hpp"
#include "art/ink_trace.hpp"
#include "art/rows.hpp"
#include "art/tone.hpp"

namespace bodkin::art {
namespace {

// One grey sample of 0 or 255 for each bit.
Pixels as_pixels(const Bits &bits) {
  Pixels pixels{bits.width, bits.height, 1, {}};
  pixels.samples.reserve(pixels.stride() * static_cast<std::size_t>(pixels.height));
  for (int y = 0; y < bits.height; ++y)
    for (int x = 0; x < bits.width; ++x)
      pixels.samples.push_back(bits.ink(x, y) ? 0 : 255);
  return pixels;
}

Outcome<Hull> traced(std::string_view bytes, const Facts &facts, const Bounds &bounds) {
  std::optional<InkTrace> trace;
  const RowSink sink{
      [&](const RowShape &shape) { trace.emplace(shape.width, shape.height, shape.channels); },
      [&](const std::uint8_t *row) {
        trace->take(row);
        return true;
      }};
  if (auto refusal = rows_of(bytes, facts, 0, bounds, sink))
    return *refusal;
  return trace->hull(facts.orientation);
}

} // namespace

Gallery::Treated Gallery::treated(const Picture &picture, bool with_crop) {
  std::array<std::int64_t, 4> crop{};
  if (with_crop && picture.crop) {
    const Crop &c = **picture.crop;
    crop = {c.x.millionths, c.y.millionths, c.width.millionths, c.height.millionths};
  }
  const Tone &tone = *picture.tone;
  return {*picture.path, picture.pdf_page, static_cast<int>(tone.kind), tone.threshold.millionths,
          crop};
}

std::string_view Gallery::bytes(const std::string &path) {
  auto found = bytes_.find(path);
  if (found == bytes_.end())
    found = bytes_.emplace(path, files_->read(path)).first;
  return found->second.view;
}

const Digest &Gallery::digest(const std::string &path) {
  auto found = digests_.find(path);
  if (found == digests_.end())
    found = digests_.emplace(path, sha256(bytes(path))).first;
  return found->second;
}

const Outcome<Facts> &Gallery::facts(const Picture &picture) {
  const Sheet sheet{*picture.path, picture.pdf_page};
  auto found = facts_.find(sheet);
  if (found == facts_.end())
    found = facts_.emplace(sheet, inspect(bytes(*picture.path), picture.pdf_page, bounds_)).first;
  return found->second;
}

const Outcome<bool> &Gallery::coloured(const Picture &picture) {
  const Treated key = treated(picture, true);
  auto found = coloured_.find(key);
  if (found == coloured_.end()) {
    const auto &known = facts(picture);
    const auto crop = picture.crop ? std::optional(**picture.crop) : std::nullopt;
    found = coloured_
                .emplace(key, known ? art::coloured(bytes(*picture.path), *known, *picture.tone,
                                                    crop, bounds_)
                                    : Outcome<bool>(known.refusal()))
                .first;
  }
  return found->second;
}

const Outcome<Hull> &Gallery::ink(const Picture &picture) {
  const Treated key = treated(picture, false);
  auto found = ink_.find(key);
  if (found != ink_.end())
    return found->second;
  const auto judge = [&]() -> Outcome<Hull> {
    const auto &known = facts(picture);
    if (!known)
      return known.refusal();
    if (known->is_drawing())
      return known->drawing->ink;
    if (picture.tone->kind != ToneKind::line)
      return traced(bytes(*picture.path), *known, bounds_);
    const auto lines = pixels(picture);
    return lines ? Outcome<Hull>(ink_hull(as_pixels(line_art(*lines, picture.tone->threshold))))
                 : Outcome<Hull>(lines.refusal());
  };
  return ink_.emplace(key, judge()).first->second;
}

const Outcome<LuminanceGrid> &Gallery::luminance(const Picture &picture) {
  const Treated key = treated(picture, false);
  auto found = luminance_.find(key);
  if (found != luminance_.end())
    return found->second;
  const auto judge = [&]() -> Outcome<LuminanceGrid> {
    const auto &known = facts(picture);
    if (!known)
      return known.refusal();
    const bool line = picture.tone->kind == ToneKind::line;
    if (known->is_drawing() && !line)
      return known->drawing->luminance;
    // Sixteen samples for each of the grid's cells.
    constexpr std::int64_t enough = 65'536;
    const auto samples = pixels(picture, line ? all_samples : enough);
    if (!samples)
      return samples.refusal();
    return luminance_grid(line ? as_pixels(line_art(*samples, picture.tone->threshold)) : *samples);
  };
  return luminance_.emplace(key, judge()).first->second;
}

Outcome<Pixels> Gallery::pixels(const Picture &picture, std::int64_t about) {
  const auto &known = facts(picture);
  if (!known)
    return known.refusal();
  return load(bytes(*picture.path), *known, about, picture.pdf_page, bounds_);
}

} // namespace bodkin::art
