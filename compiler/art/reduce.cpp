#include "art/reduce.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace bodkin::art {
namespace {

int factor(const RowShape &shape, std::int64_t about) {
  if (about <= 0)
    return 1;
  const double samples = double{1} * shape.width * shape.height;
  const double by = std::floor(std::sqrt(samples / static_cast<double>(about)));
  return static_cast<int>(std::clamp(by, 1.0, double{1} * std::max(shape.width, shape.height)));
}

int reduced(int edge, int by) { return (edge + by - 1) / by; }

} // namespace

Reduction::Reduction(const RowShape &shape, std::int64_t about)
    : shape_(shape), by_(factor(shape, about)), pixels_{reduced(shape.width, by_),
                                                        reduced(shape.height, by_),
                                                        shape.channels,
                                                        {}} {
  pixels_.samples.resize(pixels_.stride() * static_cast<std::size_t>(pixels_.height));
  if (by_ > 1)
    sums_.assign(pixels_.stride(), 0);
}

void Reduction::take(const std::uint8_t *row) {
  if (by_ == 1)
    std::memcpy(pixels_.row(y_), row, pixels_.stride());
  else
    add(row);
  ++y_;
  if (by_ > 1 && (y_ % by_ == 0 || y_ == shape_.height))
    settle();
}

void Reduction::add(const std::uint8_t *row) {
  const int channels = shape_.channels, colours = channels % 2 == 0 ? channels - 1 : channels;
  std::uint64_t *sum = sums_.data();
  for (int x = 0; x < shape_.width; x += by_, sum += channels) {
    const int squares = std::min(by_, shape_.width - x);
    for (int i = 0; i < squares; ++i, row += channels) {
      const std::uint64_t weight = colours < channels ? row[colours] : 1;
      for (int c = 0; c < colours; ++c)
        sum[c] += row[c] * weight;
      if (colours < channels)
        sum[colours] += weight;
    }
  }
}

void Reduction::settle() {
  const int channels = shape_.channels, colours = channels % 2 == 0 ? channels - 1 : channels;
  const int high = (y_ - 1) % by_ + 1;
  std::uint8_t *to = pixels_.row((y_ - 1) / by_);
  const std::uint64_t *sum = sums_.data();
  for (int x = 0; x < pixels_.width; ++x, sum += channels, to += channels) {
    const int wide = std::min(by_, shape_.width - x * by_);
    const auto count = static_cast<std::uint64_t>(wide) * static_cast<std::uint64_t>(high);
    const std::uint64_t weight = colours < channels ? sum[colours] : count;
    for (int c = 0; c < colours; ++c)
      to[c] = static_cast<std::uint8_t>(weight == 0 ? 0 : (sum[c] + weight / 2) / weight);
    if (colours < channels)
      to[colours] = static_cast<std::uint8_t>((weight + count / 2) / count);
  }
  std::fill(sums_.begin(), sums_.end(), 0);
}

} // namespace bodkin::art
