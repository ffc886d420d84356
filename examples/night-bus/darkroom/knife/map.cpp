#include "knife/drawings.hpp"

#include <array>
#include <cmath>

using blade::Line;
using blade::Point;
using blade::Shape;

namespace {

// Nobody planned this town: a grid of streets, leaning and swaying.
Point corner(int column, int row) {
  const double x = 46.0 * column - 22;
  const double y = 40.0 * row - 18;
  return {x + 9 * std::sin(y * 0.013 + 0.6) + 5 * std::sin(y * 0.041),
          y + 10 * std::sin(x * 0.012) + 4 * std::sin(x * 0.05 + y * 0.02)};
}

void blocks(Sheet &sheet) {
  for (int row = -1; row < 17; ++row) {
    for (int column = -1; column < 10; ++column) {
      Shape block = {corner(column, row), corner(column + 1, row), corner(column + 1, row + 1),
                     corner(column, row + 1)};
      const Point middle{(block[0].x + block[2].x) / 2, (block[0].y + block[2].y) / 2};
      sheet.cut(blade::sized(block, 0.83, middle), kBlack, 0.9);
      // Yards, cut out of some.
      if (sheet.dice().pick(3) == 0) {
        sheet.cut(blade::sized(block, 0.36, middle), kWhite, 0.8);
      } else if (sheet.dice().pick(2) == 0) {
        sheet.cut(blade::gouge({middle.x - 13, middle.y + 4}, {middle.x + 13, middle.y - 3}, 3),
                  kWhite, 0.3);
      }
    }
  }
}

void river(Sheet &sheet) {
  const Line course =
      blade::bend({{-30, 330}, {60, 318}, {140, 352}, {230, 356}, {310, 312}, {410, 300}}, 8);
  sheet.cut(blade::strip(course, 66, 58), kWhite, 1);
  for (std::size_t i = 1; i + 1 < course.size(); ++i) {
    for (int k = 0; k < 4; ++k) {
      const double across = -20.0 + 13 * k + sheet.dice().between(-3, 3);
      const double length = sheet.dice().between(14, 26);
      const Point a{course[i].x + sheet.dice().between(-4, 4), course[i].y + across};
      const Point next = course[i + 1];
      const double slope = (next.y - course[i].y) / (next.x - course[i].x);
      sheet.cut(blade::gouge(a, {a.x + length, a.y + slope * length}, 2.6), kBlack, 0.2);
    }
  }
}

void park(Sheet &sheet) {
  const Shape green = {corner(5, 2), corner(8, 2), corner(8, 4), corner(5, 4)};
  const Point middle{(green[0].x + green[2].x) / 2, (green[0].y + green[2].y) / 2};
  sheet.cut(blade::sized(green, 0.95, middle), kWhite, 1);
  for (int i = 0; i < 17; ++i) {
    const double x = middle.x - 54 + 18.5 * (i % 6) + sheet.dice().between(-4, 4);
    const double y = middle.y - 16 + 23.0 * (i / 6) + sheet.dice().between(-3, 3);
    sheet.cut({{x - 1, y}, {x + 1, y}, {x + 1, y + 8}, {x - 1, y + 8}}, kBlack, 0.1);
    sheet.cut(blade::disc({x, y - 3}, 6, 7, 8), kBlack, 0.6);
  }
}

// The route follows the streets, from the depot at the foot to the hill at the head.
Line route() {
  return {corner(1, 13), corner(4, 13), corner(4, 11), corner(6, 11), corner(6, 6),
          corner(3, 6),  corner(3, 3),  corner(1, 3),  corner(1, 1),  corner(5, 1)};
}

} // namespace

Sheet map() {
  Sheet sheet(kLiveWidth, kLiveHeight, 16);
  blocks(sheet);
  // The last street would run along the sheet's edge and look like a slip of the knife.
  sheet.cut({{200, 570}, {390, 560}, {390, 590}, {200, 590}}, kBlack, 1);
  river(sheet);
  park(sheet);
  const Line line = route();
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    sheet.draw({line[i], line[i + 1]}, 22, kWhite, 0.6);
    sheet.cut(blade::disc(line[i], 11, 11, 10), kWhite, 0.6);
  }
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    sheet.draw({line[i], line[i + 1]}, 7, kBlack, 0.5);
    sheet.cut(blade::disc(line[i + 1], 3.6, 3.6, 8), kBlack, 0.3);
  }
  const std::array<Point, 9> stops = {corner(1, 13), corner(4, 12), corner(6, 10),
                                      corner(6, 8),  corner(6, 6),  corner(3, 5),
                                      corner(2, 3),  corner(1, 2),  corner(5, 1)};
  for (const Point stop : stops) {
    sheet.cut(blade::disc(stop, 15, 15, 13), kBlack, 0.7);
    sheet.cut(blade::disc(stop, 11.4, 11.4, 12), kWhite, 0.5);
  }
  return sheet;
}
