#include "knife/drawings.hpp"

#include <cmath>

using blade::Point;

namespace {

constexpr double kWide = 82;

void fall(Sheet &sheet, double top, double foot, int drops, double length, double width) {
  for (int i = 0; i < drops; ++i) {
    const double x = sheet.dice().between(0, kWide + 16);
    const double y = sheet.dice().between(top, foot - length);
    sheet.cut(blade::gouge({x, y}, {x - length * 0.28, y + length}, width), kWhite, 0.2);
  }
}

void flake(Sheet &sheet, Point at, double size) {
  for (int i = 0; i < 3; ++i) {
    const blade::Shape arm = blade::strip({{at.x - size, at.y}, {at.x + size, at.y}}, 1.8, 1.8);
    sheet.cut(blade::turned(arm, 60.0 * i + 12, at), kWhite, 0.2);
  }
}

} // namespace

// A winter, top to bottom, as seen through one narrow window: wind, rain, frost, snow, fog, thaw.
Sheet rain() {
  Sheet sheet(kWide, 546, 17);
  sheet.cut(blade::box(-5, -5, kWide + 10, 560), kBlack, 0);
  // November: leaves and wind.
  for (int i = 0; i < 7; ++i) {
    const double y = 14.0 + 13 * i;
    const double x = sheet.dice().between(-6, 20);
    sheet.cut(blade::strip(blade::bend({{x, y}, {x + 22, y - 5}, {x + 44, y + 3}, {x + 66, y - 3}}),
                           1, 3),
              kWhite, 0.2);
  }
  sheet.cut(blade::round({{30, 52}, {42, 44}, {54, 50}, {46, 60}}, 2), kWhite, 0.4);
  sheet.cut(blade::round({{56, 22}, {64, 16}, {74, 20}, {66, 29}}, 2), kWhite, 0.4);
  // December: rain that means it.
  fall(sheet, 106, 212, 80, 24, 2.6);
  // January: frost, stars, and the moon to see it by.
  sheet.cut(blade::disc({50, 244}, 22, 22, 16), kWhite, 0.8);
  sheet.cut(blade::disc({41, 239}, 19, 19, 15), kBlack, 0.6);
  for (int i = 0; i < 16; ++i) {
    sheet.cut(
        blade::disc({sheet.dice().between(4, 78), sheet.dice().between(212, 292)}, 1.5, 1.5, 5),
        kWhite, 0.2);
  }
  // February: snow, then a drift of it.
  for (int row = 0; row < 5; ++row) {
    for (int i = 0; i < 3; ++i) {
      flake(sheet, {12.0 + 27 * i + (row % 2) * 11, 304.0 + 14 * row},
            sheet.dice().between(3.4, 6.4));
    }
  }
  sheet.cut({{-4, 380}, {18, 370}, {40, 376}, {64, 366}, {90, 374}, {90, 388}, {-4, 388}}, kWhite,
            0.8);
  // March: fog in bars.
  for (int i = 0; i < 9; ++i) {
    const double x = sheet.dice().between(-30, 24);
    sheet.cut(blade::gouge({x, 398.0 + 9.6 * i},
                           {x + sheet.dice().between(48, 80), 398.0 + 9.6 * i}, 4.4),
              kWhite, 0.3);
  }
  // April: a little soft rain over the first grass.
  fall(sheet, 488, 524, 9, 9, 2);
  for (int i = 0; i < 26; ++i) {
    const double x = 1.0 + 3.2 * i;
    sheet.cut(blade::gouge({x, 548},
                           {x + sheet.dice().between(-4, 4), sheet.dice().between(522, 534)}, 2.6),
              kWhite, 0.2);
  }
  return sheet;
}
