// How the rows of a picture as stored are to be turned to be seen upright: EXIF 2.32, tag 274.
#pragma once

#include <cstdint>

namespace bodkin::art {

// First mirrored left to right, if at all, then turned clockwise by quarters.
struct Orientation {
  bool mirrored = false;
  int quarters = 0; // 0 to 3
  bool operator==(const Orientation &) const = default;
  constexpr bool upright() const { return !mirrored && quarters == 0; }
  constexpr bool swaps_edges() const { return quarters % 2 == 1; }
};

// From the tag's number, 1 to 8; any other number means upright.
constexpr Orientation orientation_of(int exif) {
  switch (exif) {
  case 2:
    return {true, 0};
  case 3:
    return {false, 2};
  case 4:
    return {true, 2};
  case 5:
    return {true, 3};
  case 6:
    return {false, 1};
  case 7:
    return {true, 1};
  case 8:
    return {false, 3};
  default:
    return {};
  }
}

// x' = a x + c y + e, y' = b x + d y + f on the unit square, y running down: takes a spot of the
// picture as stored to where it is seen. In PDF, where y runs up, the same picture is placed by
// (a, -b, -c, d, e + c, 1 - f - d), see `upwards`.
struct Matrix {
  double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;
  bool operator==(const Matrix &) const = default;
};
Matrix matrix(Orientation orientation);
// The same for a unit square whose y runs up, as PDF draws images.
Matrix upwards(const Matrix &downwards);

// Where the sample at (x, y) of `width` × `height` stored ones is seen.
struct Seen {
  int x = 0, y = 0;
};
constexpr Seen seen_at(Orientation orientation, int x, int y, int width, int height) {
  if (orientation.mirrored)
    x = width - 1 - x;
  switch (orientation.quarters) {
  case 1:
    return {height - 1 - y, x};
  case 2:
    return {width - 1 - x, height - 1 - y};
  case 3:
    return {y, width - 1 - x};
  default:
    return {x, y};
  }
}

} // namespace bodkin::art
