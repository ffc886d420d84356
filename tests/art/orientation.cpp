// EXIF 2.32, tag 274, in exiftool's words for its values.
#include "art/orientation.hpp"

#include "art/exif.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace bodkin::art;

namespace {

// Where a picture's stored top left corner is seen: "top left" and so on, by a matrix.
std::string corner(const Matrix &m, double x, double y) {
  const double seen_x = m.a * x + m.c * y + m.e, seen_y = m.b * x + m.d * y + m.f;
  return std::string(seen_y < 0.5 ? "top " : "bottom ") + (seen_x < 0.5 ? "left" : "right");
}

} // namespace

TEST_CASE("the stored top left and top right corners are seen where EXIF says") {
  // The tag's definition: where the 0th row and the 0th column lie.
  const char *first[] = {"top left", "top right", "bottom right", "bottom left",
                         "top left", "top right", "bottom right", "bottom left"};
  const char *end_of_row[] = {"top right",   "top left",     "bottom left", "bottom right",
                              "bottom left", "bottom right", "top right",   "top left"};
  for (int way = 1; way <= 8; ++way) {
    CAPTURE(way);
    const Matrix m = matrix(orientation_of(way));
    CHECK(corner(m, 0, 0) == first[way - 1]);
    CHECK(corner(m, 1, 0) == end_of_row[way - 1]);
  }
}

TEST_CASE("matrix and samples agree") {
  for (int way = 1; way <= 8; ++way) {
    CAPTURE(way);
    const Orientation turned = orientation_of(way);
    const Matrix m = matrix(turned);
    for (int y = 0; y < 3; ++y)
      for (int x = 0; x < 5; ++x) {
        const double from_x = (x + 0.5) / 5, from_y = (y + 0.5) / 3;
        const int width = turned.swaps_edges() ? 3 : 5, height = turned.swaps_edges() ? 5 : 3;
        const Seen seen = seen_at(turned, x, y, 5, 3);
        CHECK(m.a * from_x + m.c * from_y + m.e == doctest::Approx((seen.x + 0.5) / width));
        CHECK(m.b * from_x + m.d * from_y + m.f == doctest::Approx((seen.y + 0.5) / height));
      }
  }
}

TEST_CASE("a matrix for upward pages does the same the other way up") {
  for (int way = 1; way <= 8; ++way) {
    CAPTURE(way);
    const Matrix down = matrix(orientation_of(way)), up = upwards(down);
    const double x = 0.2, y = 0.7;
    CHECK(up.a * x + up.c * (1 - y) + up.e == doctest::Approx(down.a * x + down.c * y + down.e));
    CHECK(up.b * x + up.d * (1 - y) + up.f ==
          doctest::Approx(1 - (down.b * x + down.d * y + down.f)));
  }
}

TEST_CASE("an EXIF block that breaks off means upright") {
  const std::string block("MM\0*\0\0\0\x08\0\1\x01\x12\0\3\0\0\0\1\0\6\0\0", 22);
  CHECK(exif_orientation(block) == Orientation{false, 1});
  for (std::size_t bytes = 0; bytes < 22; ++bytes)
    CHECK(exif_orientation(block.substr(0, bytes)) == Orientation{});
}
