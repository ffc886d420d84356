#include "knife/drawings.hpp"

using blade::Point;
using blade::Shape;

// A fox who sits and waits, facing left, one hundred high: fur in one colour, cuts in another.
void sitting_fox(Sheet &sheet, Point foot, double height, const std::string &fur,
                 const std::string &lines) {
  const double s = height / 100;
  const auto stand = [&](Shape shape) {
    for (Point &p : shape)
      p = {foot.x + p.x * s, foot.y + p.y * s};
    return shape;
  };
  // Brush, curled round the feet.
  sheet.cut(stand(blade::round(
                {{22, -10}, {38, -16}, {50, -10}, {48, 0}, {30, 4}, {2, 4}, {-8, 1}, {6, -4}})),
            fur, 0.5);
  sheet.cut(stand({{-8, 1}, {2, 4}, {8, 3.6}, {4, 0}, {9, -4}, {2, -3}}), lines, 0.2);
  // Back, haunch, chest and forelegs in one piece.
  sheet.cut(stand(blade::round({{-11, 0},
                                {-14, -1},
                                {-9, -6},
                                {-8, -30},
                                {-12, -48},
                                {-8, -62},
                                {4, -66},
                                {14, -56},
                                {22, -40},
                                {32, -22},
                                {32, -6},
                                {24, 1},
                                {6, 1}})),
            fur, 0.5);
  // Head: ears, brow, long jaw.
  sheet.cut(stand({{-36, -65},
                   {-33, -69},
                   {-22, -76},
                   {-16, -82},
                   {-16, -98},
                   {-8, -86},
                   {-2, -86},
                   {6, -97},
                   {7, -80},
                   {10, -70},
                   {6, -60},
                   {-6, -56},
                   {-20, -60},
                   {-32, -62}}),
            fur, 0.5);
  sheet.cut(stand({{-14, -84}, {-14, -92}, {-9.5, -85}}), lines, 0.1);
  sheet.cut(stand({{0, -85.5}, {4.5, -91}, {5, -83}}), lines, 0.1);
  sheet.cut(stand({{-17, -75}, {-11, -77.5}, {-9, -74}, {-13, -73}}), lines, 0.1);
  // White of cheek and chest, cut as a few long strokes.
  sheet.cut(stand({{-32, -63.5}, {-20, -65}, {-8, -68}, {4, -63}, {-6, -59}, {-20, -61.5}}), lines,
            0.2);
  sheet.cut(stand({{-9, -55}, {-3, -57}, {2, -44}, {-1, -28}, {-6, -34}, {-9, -46}}), lines, 0.3);
  sheet.cut(stand(blade::gouge({2, -2}, {3, -26}, 2.4)), lines, 0.1);
  sheet.cut(stand(blade::strip(blade::bend({{28, -8}, {20, -24}, {10, -22}, {8, -8}}), 0.8, 2.4)),
            lines, 0.1);
  for (int i = 0; i < 4; ++i) {
    const double x = 12.0 + 4 * i;
    sheet.cut(stand(blade::gouge({x + 2, -38.0 + 5 * i}, {x - 4, -50.0 + 6 * i}, 2)), lines, 0.1);
  }
  sheet.cut(stand(blade::disc({-35, -66}, 2.6, 2.2, 7)), lines, 0.1);
}
