// The convex outline of ink, gathered row by row, so that no picture need be in memory for it.
#pragma once

#include "art/ink.hpp"
#include "art/orientation.hpp"

#include <cstdint>
#include <vector>

namespace bodkin::art {

class InkTrace {
public:
  // `wider` samples are added on every side.
  InkTrace(int width, int height, int channels, int wider = 0);
  void take(const std::uint8_t *row); // from the first down
  // As seen, when the rows are stored with this orientation.
  Hull hull(Orientation orientation = {}) const;

private:
  // How far ink reaches along one of the lines between rows; none where first > last.
  struct Reach {
    int first = 1, last = 0;
  };
  bool ink(const std::uint8_t *sample) const;

  int width_, height_, channels_, wider_, y_ = 0;
  std::vector<Reach> lines_; // height + 1
};

} // namespace bodkin::art
