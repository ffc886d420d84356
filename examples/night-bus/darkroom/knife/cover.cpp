#include "knife/drawings.hpp"

#include <cmath>

using blade::Point;

namespace {

constexpr double kRadian = 3.14159265358979323846 / 180;

// A lamp's light, cut as separate rays the way paper has to show it.
void rays(Sheet &sheet, Point lamp, double from, double to) {
  for (double angle = from; angle < to; angle += 15) {
    const auto out = [&](double degrees) {
      return Point{lamp.x + 420 * std::cos(degrees * kRadian),
                   lamp.y + 420 * std::sin(degrees * kRadian)};
    };
    sheet.cut({lamp, out(angle), out(angle + 8)}, kYellow, 1);
  }
}

} // namespace

// The night bus comes straight at the reader. Its destination blind is left white: the maker
// stamps a moon into it, by hand, on every copy.
Sheet cover() {
  Sheet sheet(kLiveWidth, kLiveHeight, 11);
  sheet.cut(blade::box(-9, -9, 396, 594), kDeep, 0);
  for (int i = 0; i < 70; ++i) {
    const double x = sheet.dice().between(-10, 400);
    const double y = sheet.dice().between(266, 440);
    const double length = sheet.dice().between(14, 34);
    sheet.cut(blade::gouge({x, y}, {x - length * 0.3, y + length}, 2.6), kWhite, 0.3);
  }
  sheet.cut({{-9, 546}, {390, 540}, {390, 600}, {-9, 600}}, kBlack, 1);
  rays(sheet, {100, 504}, 126, 216);
  rays(sheet, {278, 504}, -35, 56);
  const Inks inks{kTomato, kDeep, kWhite, kYellow, kTomato, kDeep};
  bus_front(sheet, {189, 568}, 280, inks, true);
  return sheet;
}
