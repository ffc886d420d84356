#include "type/lines.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

using Kind = BreakPoint::Kind;

// Words of the given widths in points, with spaces of 4 points between them.
std::vector<BreakPoint> words(const std::vector<int> &widths) {
  std::vector<BreakPoint> points(1);
  for (const int width : widths) {
    BreakPoint point;
    point.end_x = points.back().next_x + Length::points(width);
    point.next_x = point.end_x + Length::points(4);
    point.end_spaces = points.back().next_spaces;
    point.next_spaces = point.end_spaces + Length::points(4);
    points.push_back(point);
  }
  points.back().kind = Kind::must;
  return points;
}

LineWidth wide(int points) {
  return [points](std::size_t) { return Length::points(points); };
}

} // namespace

TEST_CASE("as many words stand on a line as fit, and touching the edge fits") {
  CHECK(first_fit({words({10, 10, 10, 10, 10}), 0, 100, false}, wide(24)) ==
        std::vector<std::size_t>{2, 4, 5});
  CHECK(first_fit({words({10, 10, 10}), 0, 100, false}, wide(23)) ==
        std::vector<std::size_t>{1, 2, 3});
}

TEST_CASE(
    "a justified line closes its spaces by a fifth for one more word, a ranged one does not") {
  const auto points = words({10, 10, 10, 10});
  const LineWidth width = [](std::size_t) { return Length::points(38) - Length::points(8) / 5; };
  CHECK(first_fit({points, 0, 100, true}, width) == std::vector<std::size_t>{3, 4});
  CHECK(first_fit({points, 0, 100, false}, width) == std::vector<std::size_t>{2, 4});
}

TEST_CASE("the last line of a justified paragraph is not closed up") {
  const LineWidth width = [](std::size_t) { return Length::points(23); };
  CHECK(first_fit({words({10, 10}), 0, 100, true}, width) == std::vector<std::size_t>{1, 2});
}

TEST_CASE("a hard break ends a line that has room") {
  auto points = words({10, 10, 10});
  points[1].kind = Kind::must;
  CHECK(first_fit({points, 0, 100, false}, wide(100)) == std::vector<std::size_t>{1, 3});
}

TEST_CASE(
    "a word wider than the measure stands alone and too wide where it has no letters to part") {
  CHECK(first_fit({words({10, 90, 10}), 0, 100, false}, wide(30)) ==
        std::vector<std::size_t>{1, 2, 3});
}

TEST_CASE("a word is broken between its letters only from the start of a line") {
  auto points = words({10, 20, 20, 20, 10});
  // Points 2 and 3 lie inside one word of 60 points that begins after point 1.
  for (const std::size_t i : {2u, 3u}) {
    points[i].kind = Kind::in_a_word;
    points[i].next_x = points[i].end_x;
    points[i + 1].end_x = points[i].next_x + Length::points(20);
    points[i + 1].next_x = points[i + 1].end_x + Length::points(4);
  }
  points[5].end_x = points[4].next_x + Length::points(10);
  CHECK(first_fit({points, 0, 100, false}, wide(40)) == std::vector<std::size_t>{1, 3, 5});
  CHECK(first_fit({points, 0, 100, false}, wide(64)) == std::vector<std::size_t>{1, 4, 5});
}

TEST_CASE("the first line may be narrower, and no more lines are made than are asked for") {
  const LineWidth width = [](std::size_t n) { return Length::points(n == 0 ? 10 : 24); };
  CHECK(first_fit({words({10, 10, 10, 10, 10}), 0, 2, false}, width) ==
        std::vector<std::size_t>{1, 3});
  CHECK(first_fit({words({10, 10, 10}), 2, 5, false}, wide(24)) == std::vector<std::size_t>{3});
  CHECK(first_fit({words({10}), 1, 5, false}, wide(24)).empty());
}

} // namespace bodkin
