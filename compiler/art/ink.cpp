#include "art/ink.hpp"

#include "art/ink_trace.hpp"

#include <algorithm>

namespace bodkin::art {
namespace {

constexpr std::uint8_t near_white = 250;

struct Corner {
  std::int64_t x = 0, y = 0;
};

// Greater than 0 where the way from a over b to c turns right, y running down.
std::int64_t bend(const Corner &a, const Corner &b, const Corner &c) {
  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}

// One side of the outline, downwards: on the right side (1) each turn is to the right, else its
// corner lies inside and is dropped.
void grow(std::vector<Corner> &side, const Corner &corner, int sign) {
  while (side.size() >= 2 && sign * bend(side[side.size() - 2], side.back(), corner) <= 0)
    side.pop_back();
  side.push_back(corner);
}

Hull traced(PixelView pixels, int wider) {
  InkTrace trace(pixels.width, pixels.height, pixels.channels, wider);
  for (int y = 0; y < pixels.height; ++y)
    trace.take(pixels.row(y));
  return trace.hull();
}

} // namespace

InkTrace::InkTrace(int width, int height, int channels, int wider)
    : width_(width), height_(height), channels_(channels), wider_(wider),
      lines_(static_cast<std::size_t>(height) + 1) {}

bool InkTrace::ink(const std::uint8_t *sample) const {
  if (channels_ % 2 == 0 && sample[channels_ - 1] == 0)
    return false;
  const int colours = channels_ >= 3 ? 3 : 1;
  return std::any_of(sample, sample + colours, [](std::uint8_t v) { return v < near_white; });
}

void InkTrace::take(const std::uint8_t *row) {
  const int y = y_++;
  int first = 0, last = width_ - 1;
  while (first <= last && !ink(row + static_cast<std::ptrdiff_t>(first) * channels_))
    ++first;
  if (first > last)
    return;
  while (!ink(row + static_cast<std::ptrdiff_t>(last) * channels_))
    --last;
  first = std::max(first - wider_, 0);
  last = std::min(last + 1 + wider_, width_);
  for (int line = std::max(y - wider_, 0); line <= std::min(y + 1 + wider_, height_); ++line) {
    Reach &reach = lines_[static_cast<std::size_t>(line)];
    const bool none = reach.first > reach.last;
    reach = {none ? first : std::min(reach.first, first), none ? last : std::max(reach.last, last)};
  }
}

Hull InkTrace::hull(Orientation orientation) const {
  std::vector<Corner> left, right;
  for (std::size_t line = 0; line < lines_.size(); ++line) {
    const Reach &reach = lines_[line];
    if (reach.first > reach.last)
      continue;
    const auto y = static_cast<std::int64_t>(line);
    grow(left, {reach.first, y}, -1);
    grow(right, {reach.last, y}, 1);
  }
  const Matrix m = matrix(orientation);
  Hull hull;
  const auto add = [&](const Corner &corner) {
    const double x = static_cast<double>(corner.x) / width_;
    const double y = static_cast<double>(corner.y) / height_;
    hull.push_back({m.a * x + m.c * y + m.e, m.b * x + m.d * y + m.f});
  };
  // Down the right side and up the left is clockwise.
  std::for_each(right.begin(), right.end(), add);
  std::for_each(left.rbegin(), left.rend(), add);
  if (orientation.mirrored)
    std::reverse(hull.begin(), hull.end());
  return hull;
}

Hull ink_hull(PixelView pixels) { return traced(pixels, 0); }
Hull ink_hull_rounded_out(PixelView pixels) { return traced(pixels, 1); }

} // namespace bodkin::art
