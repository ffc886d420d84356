#include "art/coloured.hpp"

#include "art/rows.hpp"

#include <algorithm>

namespace bodkin::art {
namespace {

class ColourCount {
public:
  ColourCount(const SampleBox &box, int channels)
      : box_(box), channels_(channels),
        samples_(std::int64_t{box.right - box.left} * (box.bottom - box.top)) {}

  // False once the answer is sure.
  bool take(const std::uint8_t *row) {
    if (y_ >= box_.top)
      for (int x = box_.left; x < box_.right; ++x)
        count_ += is_coloured(row + std::ptrdiff_t{x} * channels_) ? 1 : 0;
    ++y_;
    return !coloured() && y_ < box_.bottom;
  }
  bool coloured() const { return count_ * 10'000 > samples_; }

private:
  // White shining through draws the channels together in the measure of alpha.
  bool is_coloured(const std::uint8_t *s) const {
    constexpr int apart = 8;
    const int alpha = channels_ == 4 ? s[3] : 255;
    const int widest = std::max({s[0], s[1], s[2]}) - std::min({s[0], s[1], s[2]});
    return widest * alpha > apart * 255;
  }

  SampleBox box_;
  int channels_;
  std::int64_t samples_, count_ = 0;
  int y_ = 0;
};

// The box of samples as they are stored that is seen as `seen`.
SampleBox as_stored(const SampleBox &seen, Orientation orientation, const RowShape &shape) {
  // Turning back: the opposite quarter for a plain turn; a mirrored one undoes itself but for the
  // turn.
  const Orientation back = orientation.mirrored
                               ? Orientation{true, orientation.quarters}
                               : Orientation{false, (4 - orientation.quarters) % 4};
  const bool swapped = orientation.swaps_edges();
  const int width = swapped ? shape.height : shape.width;
  const int height = swapped ? shape.width : shape.height;
  const Seen a = seen_at(back, seen.left, seen.top, width, height);
  const Seen b = seen_at(back, seen.right - 1, seen.bottom - 1, width, height);
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x) + 1, std::max(a.y, b.y) + 1};
}

} // namespace

bool coloured(PixelView pixels) {
  if (!pixels.coloured_channels())
    return false;
  ColourCount count({0, 0, pixels.width, pixels.height}, pixels.channels);
  for (int y = 0; y < pixels.height && count.take(pixels.row(y)); ++y) {
  }
  return count.coloured();
}

Outcome<bool> coloured(std::string_view bytes, const Facts &facts, const Tone &tone,
                       const std::optional<Crop> &crop, const Bounds &bounds) {
  if (tone.kind != ToneKind::as_is || facts.channels < 3)
    return false;
  if (facts.is_drawing())
    return facts.drawing->coloured;
  const SampleBox seen =
      samples_within(static_cast<int>(facts.width), static_cast<int>(facts.height), crop);
  std::optional<ColourCount> count;
  const RowSink sink{[&](const RowShape &shape) {
                       count.emplace(as_stored(seen, facts.orientation, shape), shape.channels);
                     },
                     [&](const std::uint8_t *row) { return count->take(row); }};
  if (auto refusal = rows_of(bytes, facts, 0, bounds, sink))
    return *refusal;
  return count->coloured();
}

} // namespace bodkin::art
