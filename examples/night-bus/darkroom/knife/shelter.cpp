#include "knife/drawings.hpp"

#include <cmath>

using blade::Point;

namespace {

constexpr double kPi = 3.14159265358979323846;
const Point kMoon{286, 96};

// Sky: strokes that run round the moon, thinning with distance, broken as a gouge breaks.
void sky(Sheet &sheet) {
  for (double radius = 62; radius < 420; radius += 11 + radius * 0.028) {
    double angle = sheet.dice().between(0, 0.3);
    while (angle < 2 * kPi) {
      const double span = sheet.dice().between(16, 44) / radius;
      const Point a{kMoon.x + radius * std::cos(angle), kMoon.y + radius * std::sin(angle)};
      const Point b{kMoon.x + radius * std::cos(angle + span),
                    kMoon.y + radius * std::sin(angle + span)};
      const double width = 4.6 - radius * 0.0085;
      if (b.y < 330 && a.y < 330 && width > 1)
        sheet.cut(blade::gouge(a, b, width), kWhite, 0.3);
      angle += span + sheet.dice().between(5, 13) / radius;
    }
  }
  sheet.cut(blade::disc(kMoon, 54, 54, 22), kBlack, 1);
  sheet.cut(blade::disc(kMoon, 47, 47, 22), kWhite, 1);
  sheet.cut(blade::round({{262, 66}, {280, 58}, {300, 60}, {288, 70}, {290, 82}, {272, 84}}, 2),
            kBlack, 0.6);
  sheet.cut(blade::round({{296, 110}, {322, 96}, {326, 112}, {308, 130}}, 2), kBlack, 0.6);
  sheet.cut(blade::disc({262, 116}, 5, 4, 6), kBlack, 0.5);
  sheet.cut(blade::disc({308, 76}, 3, 3, 6), kBlack, 0.4);
}

void hedge_and_road(Sheet &sheet) {
  sheet.cut({{-10, 336},
             {40, 318},
             {90, 326},
             {150, 310},
             {220, 322},
             {290, 308},
             {390, 322},
             {390, 600},
             {-10, 600}},
            kBlack, 1.5);
  // Grass blades on the bank, left of the shelter and right of it.
  for (int i = 0; i < 120; ++i) {
    const double x = sheet.dice().between(-5, 385);
    const double y = sheet.dice().between(332, 440);
    const double lean = sheet.dice().between(-5, 5);
    sheet.cut(blade::gouge({x, y}, {x + lean, y - sheet.dice().between(9, 18)}, 2.4), kWhite, 0.2);
  }
  sheet.cut({{-10, 468}, {390, 452}, {390, 600}, {-10, 600}}, kBlack, 1);
  sheet.cut({{-10, 470}, {390, 454}, {390, 461}, {-10, 478}}, kWhite, 1);
  for (int i = 0; i < 90; ++i) {
    const double y = 486 + 90 * std::sqrt(sheet.dice().share());
    const double x = sheet.dice().between(-20, 380);
    const double length = sheet.dice().between(14, 50);
    sheet.cut(blade::gouge({x, y}, {x + length, y - length * 0.04}, 1.6 + (y - 480) * 0.024),
              kWhite, 0.2);
  }
}

void shelter_itself(Sheet &sheet) {
  // Inside it is lit: one white room, cut clean.
  sheet.cut({{52, 268}, {262, 268}, {262, 476}, {52, 482}}, kBlack, 1);
  sheet.cut({{64, 292}, {250, 290}, {250, 456}, {64, 460}}, kWhite, 0.8);
  sheet.cut({{30, 256}, {286, 246}, {292, 262}, {292, 276}, {26, 284}, {26, 270}}, kBlack, 1);
  sheet.cut({{34, 268}, {286, 258}, {286, 264}, {34, 275}}, kWhite, 0.6);
  // Frame of the rear wall's panes.
  for (const double x : {124.0, 188.0}) {
    sheet.cut(blade::box(x, 290, 5, 168), kBlack, 0.5);
  }
  sheet.cut(blade::box(64, 372, 186, 5), kBlack, 0.6);
  // A bill in a frame, and the bench.
  sheet.cut(blade::box(200, 306, 38, 54), kBlack, 0.6);
  sheet.cut(blade::box(205, 311, 28, 44), kWhite, 0.5);
  for (int i = 0; i < 6; ++i) {
    sheet.cut(blade::box(209, 316 + 6.2 * i, i == 5 ? 10 : 20, 2.6), kBlack, 0.2);
  }
  sheet.cut({{70, 420}, {244, 417}, {244, 428}, {70, 431}}, kBlack, 0.6);
  sheet.cut(blade::box(86, 428, 7, 36), kBlack, 0.5);
  sheet.cut(blade::box(222, 426, 7, 36), kBlack, 0.5);
  sheet.cut({{46, 262}, {58, 262}, {58, 486}, {46, 486}}, kBlack, 0.7);
  sheet.cut({{256, 258}, {268, 258}, {268, 480}, {256, 480}}, kBlack, 0.7);
  sheet.cut(blade::gouge({52, 280}, {52, 474}, 3), kWhite, 0.3);
  sheet.cut(blade::gouge({262, 276}, {262, 468}, 3), kWhite, 0.3);
}

void stop_flag(Sheet &sheet) {
  sheet.cut(blade::box(322, 246, 8, 240), kBlack, 0.6);
  sheet.cut(blade::gouge({326, 262}, {326, 478}, 3.4), kWhite, 0.3);
  sheet.cut({{306, 204}, {352, 202}, {353, 252}, {307, 254}}, kBlack, 0.8);
  sheet.cut({{311, 209}, {347, 207}, {348, 247}, {312, 249}}, kWhite, 0.6);
  // The sign is a bus with nothing written on it.
  sheet.cut({{318, 216}, {341, 215}, {342, 236}, {318, 237}}, kBlack, 0.4);
  sheet.cut({{321, 219}, {338, 218.4}, {338.6, 226}, {321, 226.4}}, kWhite, 0.2);
  sheet.cut(blade::disc({322.5, 240}, 2.6, 2.6, 7), kBlack, 0.2);
  sheet.cut(blade::disc({337, 239.4}, 2.6, 2.6, 7), kBlack, 0.2);
}

} // namespace

// A lino cut: white lines on black. The one who waits is a fox.
Sheet shelter() {
  Sheet sheet(kLiveWidth, kLiveHeight, 7);
  sheet.cut(blade::box(-9, -9, 396, 594), kBlack, 0);
  sky(sheet);
  hedge_and_road(sheet);
  shelter_itself(sheet);
  sitting_fox(sheet, {148, 420}, 124, kBlack, kWhite);
  stop_flag(sheet);
  return sheet;
}
