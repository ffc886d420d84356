// Samples gathered by whole numbers: each kept sample is the mean of the square that it stands for,
// colour weighed by alpha. The last square of a row or column may be smaller.
#pragma once

#include "art/pixels.hpp"
#include "art/rows.hpp"

#include <cstdint>
#include <vector>

namespace bodkin::art {

class Reduction {
public:
  // By the largest number that leaves `about` samples; by 1 where `about` is 0.
  Reduction(const RowShape &shape, std::int64_t about);
  void take(const std::uint8_t *row);
  Pixels finish() { return std::move(pixels_); }

private:
  void add(const std::uint8_t *row);
  void settle();

  RowShape shape_;
  int by_, y_ = 0;
  Pixels pixels_;
  std::vector<std::uint64_t> sums_; // one row of kept samples
};

} // namespace bodkin::art
