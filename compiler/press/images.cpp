#include "press/images.hpp"

#include "art/coloured.hpp"
#include "art/jpeg.hpp"
#include "art/load.hpp"
#include "art/tone.hpp"
#include "press/image_object.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

constexpr int photograph_quality = 92; // of pictures that come lossy and must be stored anew
constexpr int coarse_quality = 75;
constexpr double line_art_dpi = 600;

Transform of(const art::Matrix &m) {
  return {.xx = m.a, .yx = m.b, .xy = m.c, .yy = m.d, .x0 = m.e, .y0 = m.f};
}

// PDF draws an image in a unit square whose y runs up.
Transform downwards() { return {.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = 1}; }

// The part of the whole that a box of samples covers, as a map of unit squares.
Transform part_of(const art::SampleBox &box, int width, int height) {
  const double w = width, h = height;
  return {.xx = (box.right - box.left) / w,
          .yx = 0,
          .xy = 0,
          .yy = (box.bottom - box.top) / h,
          .x0 = box.left / w,
          .y0 = box.top / h};
}

bool lossy(const art::Facts &facts) {
  return facts.format == art::Format::jpeg || facts.format == art::Format::heic;
}

bool black_and_white(const art::Pixels &pixels) {
  return pixels.channels == 1 &&
         std::all_of(pixels.samples.begin(), pixels.samples.end(),
                     [](std::uint8_t sample) { return sample == 0 || sample == 255; });
}

std::int64_t samples_at(const Size &seen, double dpi) {
  return static_cast<std::int64_t>(seen.width.in_inches() * dpi * seen.height.in_inches() * dpi);
}

} // namespace

std::optional<PlacedImage> Images::place(const Picture &picture, bool grey, const Size &seen) {
  std::array<std::int64_t, 4> crop{0, 0, 1'000'000, 1'000'000};
  if (picture.crop)
    crop = {(*picture.crop)->x.millionths, (*picture.crop)->y.millionths,
            (*picture.crop)->width.millionths, (*picture.crop)->height.millionths};
  const auto &facts = gallery_.facts(picture);
  const std::int64_t made_for = facts && facts->is_drawing() ? seen.width.units() : 0;
  const Key key{*picture.path,
                picture.pdf_page,
                static_cast<int>(picture.tone->kind),
                picture.tone->threshold.millionths,
                crop,
                grey,
                made_for};
  const auto found = made_.find(key);
  if (found != made_.end())
    return found->second;
  return made_.emplace(key, make(picture, grey, seen)).first->second;
}

std::optional<PlacedImage> Images::make(const Picture &picture, bool grey, const Size &seen) {
  const auto &facts = gallery_.facts(picture);
  if (!facts)
    return std::nullopt;
  if (coarse_dpi_)
    return coarse(picture, *facts, seen);
  const bool one_ink = grey || picture.tone->kind == ToneKind::grey;
  const bool stored_grey = facts->channels == 1;
  if (picture.tone->kind != ToneKind::line && art::can_be_placed(*facts) &&
      (stored_grey || !one_ink))
    return untouched(picture, *facts);
  return decoded(picture, *facts, one_ink, seen);
}

std::optional<PlacedImage> Images::coarse(const Picture &picture, const art::Facts &facts,
                                          const Size &seen) {
  auto pixels =
      art::load_grey(gallery_.bytes(*picture.path), facts,
                     std::max<std::int64_t>(samples_at(seen, *coarse_dpi_), 1), picture.pdf_page);
  if (!pixels)
    return std::nullopt;
  const std::optional<Crop> crop =
      picture.crop ? std::optional<Crop>(**picture.crop) : std::nullopt;
  const Transform place = part_of(art::samples_within(pixels->width, pixels->height, crop),
                                  pixels->width, pixels->height) *
                          downwards();
  const art::Pixels kept = art::cropped(std::move(*pixels), crop);
  if (kept.has_alpha())
    return PlacedImage{image_of(pdf_, kept), place};
  return PlacedImage{
      image_of_jpeg(pdf_, art::to_jpeg(kept, coarse_quality), kept.width, kept.height, 1), place};
}

std::optional<PlacedImage> Images::untouched(const Picture &picture, const art::Facts &facts) {
  const std::string_view bytes = gallery_.bytes(*picture.path);
  // A grey profile would be an ICC space of its own on a black side; device grey is what it means.
  const std::string profile =
      facts.profile && facts.channels != 1 ? art::icc_profile(bytes, facts) : std::string();
  return PlacedImage{image_of_jpeg(pdf_, art::placed_jpeg(bytes, facts), profile),
                     of(art::matrix(facts.orientation)) * downwards()};
}

std::optional<PlacedImage> Images::decoded(const Picture &picture, const art::Facts &facts,
                                           bool grey, const Size &seen) {
  const std::string_view bytes = gallery_.bytes(*picture.path);
  if (grey && picture.tone->kind != ToneKind::line && facts.jpeg && facts.jpeg->luma_first &&
      art::can_be_placed(facts)) {
    const auto &coloured = gallery_.coloured(picture);
    // Of a picture without colour the JPEG's own luma is its grey, to the last bit.
    if (coloured && !*coloured)
      if (auto data = art::grey_jpeg(bytes, facts)) {
        const bool swapped = facts.orientation.swaps_edges();
        const auto width = static_cast<int>(swapped ? facts.height : facts.width);
        const auto height = static_cast<int>(swapped ? facts.width : facts.height);
        return PlacedImage{image_of_jpeg(pdf_, std::move(*data), width, height, 1),
                           of(art::matrix(facts.orientation)) * downwards()};
      }
  }
  const std::int64_t about = facts.is_drawing() ? samples_at(seen, line_art_dpi) : art::all_samples;
  const bool line = picture.tone->kind == ToneKind::line;
  // Line art lays alpha on white before it is grey.
  const bool grey_at_once = line ? !facts.alpha : grey;
  auto pixels = grey_at_once ? art::load_grey(bytes, facts, about, picture.pdf_page)
                             : art::load(bytes, facts, about, picture.pdf_page);
  if (!pixels)
    return std::nullopt;
  const std::optional<Crop> crop =
      picture.crop ? std::optional<Crop>(**picture.crop) : std::nullopt;
  const Transform place = part_of(art::samples_within(pixels->width, pixels->height, crop),
                                  pixels->width, pixels->height) *
                          downwards();
  art::Pixels kept = art::cropped(std::move(*pixels), crop);
  if (line)
    return PlacedImage{image_of(pdf_, art::line_art(std::move(kept), picture.tone->threshold)),
                       place};
  if (grey || (kept.coloured_channels() && !art::coloured(kept)))
    kept = art::grey(std::move(kept));
  if (black_and_white(kept))
    return PlacedImage{image_of(pdf_, art::line_art(std::move(kept), {500'000})), place};
  if (lossy(facts) && !kept.has_alpha())
    return PlacedImage{image_of_jpeg(pdf_, art::to_jpeg(kept, photograph_quality), kept.width,
                                     kept.height, kept.coloured_channels() ? 3 : 1),
                       place};
  return PlacedImage{image_of(pdf_, kept), place};
}

} // namespace bodkin::press
