// How far lines that are set reach from the top left of their box, in points.
#pragma once

#include "type/set.hpp"

#include <algorithm>
#include <vector>

namespace bodkin::press {

inline double foot_of(const std::vector<Line> &lines) {
  return lines.empty() ? 0 : lines.back().foot.in_points();
}
inline double right_of(const std::vector<Line> &lines) {
  double right = 0;
  for (const Line &line : lines)
    right = std::max(right, line.right.in_points());
  return right;
}

} // namespace bodkin::press
