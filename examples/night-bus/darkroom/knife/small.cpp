#include "knife/drawings.hpp"

#include <cmath>

using blade::Point;

// A street lamp as tall as a page, with its light cut as separate strokes.
Sheet lamp_post() {
  Sheet sheet(166, 540, 31);
  constexpr double kRadian = 3.14159265358979323846 / 180;
  for (int i = 0; i < 17; ++i) {
    const double angle = (36.0 + 7.2 * i) * kRadian;
    const double inner = 34 + sheet.dice().between(0, 6);
    const double outer = inner + (i % 2 == 0 ? 54 : 32) + sheet.dice().between(0, 8);
    sheet.cut(blade::gouge({90 + inner * std::cos(angle), 52 + inner * std::sin(angle)},
                           {90 + outer * std::cos(angle), 52 + outer * std::sin(angle)}, 3.4),
              kBlack, 0.3);
  }
  sheet.cut(blade::box(140, 22, 8, 490), kBlack, 0.7);
  sheet.cut(blade::strip(blade::bend({{144, 40}, {140, 18}, {118, 10}, {92, 16}}), 7, 6), kBlack,
            0.4);
  sheet.cut({{70, 46}, {76, 26}, {86, 18}, {98, 18}, {106, 26}, {112, 46}}, kBlack, 0.7);
  sheet.cut({{80, 50}, {102, 50}, {98, 62}, {84, 62}}, kBlack, 0.5);
  sheet.cut({{85, 52}, {97, 52}, {95, 59}, {87, 59}}, kWhite, 0.2);
  sheet.cut({{135, 420}, {153, 420}, {157, 536}, {131, 536}}, kBlack, 0.7);
  sheet.cut({{126, 530}, {162, 530}, {166, 540}, {122, 540}}, kBlack, 0.5);
  sheet.cut(blade::gouge({144, 520}, {144, 430}, 3), kWhite, 0.2);
  sheet.cut(blade::gouge({144, 400}, {144, 60}, 1.8), kWhite, 0.2);
  return sheet;
}

// The bus, so far off that it is nearly gone.
Sheet little_bus() {
  Sheet sheet(108, 46, 37);
  bus_side(sheet, {103, 40}, 98, {kBlack, kBlack, kWhite, kBlack, kBlack, kWhite});
  return sheet;
}

Sheet flask() {
  Sheet sheet(120, 252, 41);
  sheet.cut({{36, 92}, {84, 92}, {88, 100}, {88, 240}, {82, 248}, {38, 248}, {32, 240}, {32, 100}},
            kBlack, 0.8);
  sheet.cut({{40, 62}, {80, 62}, {82, 88}, {38, 88}}, kBlack, 0.6);
  for (int i = 0; i < 7; ++i) {
    sheet.cut(blade::gouge({44.0 + 5.4 * i, 85}, {44.0 + 5.4 * i, 66}, 1.8), kWhite, 0.1);
  }
  // A band of plaid: two ways of cutting, crossing.
  for (const double y : {132.0, 156.0, 180.0}) {
    sheet.cut({{33, y}, {87, y - 1}, {87, y + 4}, {33, y + 5}}, kWhite, 0.3);
  }
  for (const double x : {44.0, 60.0, 76.0}) {
    sheet.cut({{x - 2, 124}, {x + 2, 124}, {x + 1.6, 192}, {x - 2, 192}}, kWhite, 0.3);
  }
  sheet.cut(blade::gouge({40, 238}, {40, 204}, 3), kWhite, 0.2);
  sheet.cut(blade::strip(blade::bend({{52, 54}, {46, 42}, {56, 30}, {50, 14}}), 1.4, 4), kBlack,
            0.2);
  sheet.cut(blade::strip(blade::bend({{68, 56}, {74, 40}, {64, 26}, {72, 4}}), 1.4, 4.4), kBlack,
            0.2);
  return sheet;
}

Sheet moth() {
  Sheet sheet(90, 72, 43);
  for (const bool flip : {false, true}) {
    const auto side = [flip](blade::Shape shape) {
      return flip ? blade::mirrored(shape, 45) : shape;
    };
    sheet.cut(side({{42, 28}, {26, 10}, {4, 4}, {2, 22}, {16, 38}, {40, 42}}), kBlack, 0.7);
    sheet.cut(side({{41, 44}, {20, 44}, {12, 58}, {24, 68}, {38, 62}}), kBlack, 0.7);
    sheet.cut(side(blade::disc({18, 20}, 5, 5, 9)), kWhite, 0.3);
    sheet.cut(side(blade::disc({18, 20}, 2, 2, 7)), kBlack, 0.2);
    sheet.cut(side(blade::gouge({38, 38}, {24, 30}, 2.2)), kWhite, 0.1);
    sheet.cut(side(blade::gouge({36, 58}, {22, 56}, 2.2)), kWhite, 0.1);
    sheet.cut(side(blade::strip(blade::bend({{44, 20}, {38, 8}, {30, 2}}), 1.8, 1.2)), kBlack, 0.1);
  }
  sheet.cut(blade::round({{45, 16}, {50, 24}, {49, 46}, {45, 66}, {41, 46}, {40, 24}}, 2), kBlack,
            0.2);
  for (const double y : {36.0, 43.0, 50.0}) {
    sheet.cut(blade::gouge({41.6, y}, {48.4, y}, 1.6), kWhite, 0.1);
  }
  return sheet;
}

// The list of contents as the line it is: fifteen stops, 26 points apart.
Sheet way() {
  Sheet sheet(20, 390, 47);
  sheet.cut({{7, 13}, {13, 13}, {13, 377}, {7, 377}}, kBlack, 0.5);
  for (int stop = 0; stop < 15; ++stop) {
    const Point middle{10, 13 + 26.0 * stop};
    sheet.cut(blade::disc(middle, 7.6, 7.6, 11), kBlack, 0.4);
    sheet.cut(blade::disc(middle, 4.4, 4.4, 10), kWhite, 0.4);
  }
  return sheet;
}
