#include "art/orientation.hpp"

namespace bodkin::art {

Matrix matrix(Orientation orientation) {
  Matrix m;
  if (orientation.mirrored)
    m = {-1, 0, 0, 1, 1, 0};
  // A quarter clockwise takes (x, y) to (1 − y, x).
  for (int i = 0; i < orientation.quarters; ++i)
    m = {-m.b, m.a, -m.d, m.c, 1 - m.f, m.e};
  return m;
}

Matrix upwards(const Matrix &m) { return {m.a, -m.b, -m.c, m.d, m.e + m.c, 1 - m.f - m.d}; }

} // namespace bodkin::art
