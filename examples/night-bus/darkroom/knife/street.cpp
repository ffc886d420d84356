#include "knife/drawings.hpp"

#include <array>

using blade::Point;
using blade::Shape;

namespace {

constexpr double kPavement = 446;

struct House {
  double left;
  double width;
  double eaves;
  double ridge; // the roof's highest point; equal to the eaves for a flat roof
  std::string wall;
};

void build(Sheet &sheet, const House &house) {
  const double right = house.left + house.width;
  sheet.cut({{house.left, kPavement + 4},
             {house.left, house.eaves},
             {house.left + house.width * 0.5, house.ridge},
             {right, house.eaves},
             {right, kPavement + 4}},
            house.wall, 1);
  if (house.ridge < house.eaves) {
    const double x = house.left + house.width * 0.72;
    sheet.cut(blade::box(x, house.ridge - 8, 13, 34), house.wall, 0.7);
  }
}

void window(Sheet &sheet, Point at, double width, double height) {
  sheet.cut(blade::box(at.x, at.y, width, height), kYellow, 0.8);
}

void person(Sheet &sheet, Point foot, double height, const std::string &colour) {
  const double s = height / 100;
  const auto p = [&](double x, double y) { return Point{foot.x + x * s, foot.y + y * s}; };
  sheet.cut({p(-20, 0), p(-18, -44), p(-22, -52), p(-12, -68), p(12, -68), p(22, -52), p(18, -44),
             p(20, 0)},
            colour, 0.3);
  sheet.cut(blade::disc(p(0, -84), 13 * s, 15 * s, 9), colour, 0.3);
}

// Who is up, house by house from the left.
void reader(Sheet &sheet) {
  window(sheet, {36, 300}, 44, 56);
  person(sheet, {56, 356}, 44, kBlack);
  sheet.cut({{62, 336}, {71, 330}, {72, 341}, {63, 346}}, kWhite, 0.2);
  sheet.cut(blade::strip({{40, 300}, {40, 356}}, 3, 3), kTomato);
}

void ladder(Sheet &sheet) {
  window(sheet, {122, 250}, 52, 78);
  sheet.cut(blade::strip({{130, 328}, {146, 268}}, 2.4, 2.4), kBlack, 0.2);
  sheet.cut(blade::strip({{166, 328}, {150, 268}}, 2.4, 2.4), kBlack, 0.2);
  for (const double y : {284.0, 298.0, 312.0}) {
    sheet.cut(blade::strip({{147 - (y - 268) * 0.26, y}, {149 + (y - 268) * 0.26, y}}, 2, 2),
              kBlack, 0.1);
  }
  person(sheet, {148, 296}, 36, kBlack);
  sheet.cut(blade::strip({{152, 274}, {164, 256}}, 3, 2.4), kBlack, 0.2);
  sheet.cut(blade::box(158, 251, 13, 4), kTomato, 0.2);
}

void cellist(Sheet &sheet) {
  window(sheet, {226, 322}, 50, 60);
  person(sheet, {246, 382}, 48, kBlack);
  sheet.cut(blade::round({{256, 376},
                          {251, 366},
                          {256, 360},
                          {254, 352},
                          {260, 348},
                          {266, 352},
                          {264, 360},
                          {269, 366},
                          {264, 376}},
                         2),
            kTomato, 0.2);
  sheet.cut(blade::strip({{260, 352}, {258, 332}}, 2.4, 2), kTomato, 0.1);
  sheet.cut(blade::strip({{244, 360}, {273, 366}}, 1.6, 1.6), kBlack, 0.1);
}

void cat(Sheet &sheet) {
  window(sheet, {318, 226}, 34, 44);
  sheet.cut(
      blade::round({{326, 270}, {325, 258}, {331, 250}, {339, 252}, {343, 262}, {343, 270}}, 2),
      kBlack, 0.2);
  sheet.cut({{326, 252}, {325, 240}, {330, 244}, {335, 244}, {339, 239}, {339, 252}}, kBlack, 0.2);
  sheet.cut(blade::strip(blade::bend({{342, 268}, {349, 262}, {346, 252}}), 2.6, 1.6), kBlack, 0.1);
}

void dancers(Sheet &sheet) {
  window(sheet, {420, 262}, 64, 64);
  person(sheet, {438, 326}, 50, kBlack);
  person(sheet, {466, 326}, 46, kTomato);
  sheet.cut({{456, 306}, {476, 306}, {482, 326}, {450, 326}}, kTomato, 0.2);
  sheet.cut(blade::strip({{444, 296}, {451, 274}}, 4, 2.6), kBlack, 0.2);
  sheet.cut(blade::strip({{460, 298}, {452, 274}}, 4, 2.6), kTomato, 0.2);
  sheet.cut(blade::strip({{440, 304}, {462, 309}}, 3.4, 3), kBlack, 0.2);
}

void baby(Sheet &sheet) {
  window(sheet, {528, 334}, 44, 50);
  person(sheet, {548, 384}, 44, kBlack);
  sheet.cut(blade::disc({560, 362}, 6, 5, 8), kWhite, 0.2);
  sheet.cut({{549, 360}, {562, 364}, {558, 371}, {547, 368}}, kWhite, 0.2);
}

void baker(Sheet &sheet) {
  window(sheet, {606, 362}, 82, 58);
  person(sheet, {634, 420}, 52, kBlack);
  sheet.cut({{626, 372}, {624, 363}, {634, 360}, {644, 363}, {642, 372}}, kWhite, 0.3);
  for (const double x : {654.0, 667.0, 680.0}) {
    sheet.cut(blade::disc({x, 404}, 5.4, 3.6, 8), kTomato, 0.3);
  }
  sheet.cut(blade::box(646, 408, 42, 3), kBlack, 0.2);
  sheet.cut({{598, 352}, {696, 352}, {702, 364}, {592, 364}}, kTomato, 0.6);
}

void dark_windows(Sheet &sheet) {
  constexpr std::array<Point, 11> kAsleep = {{{36, 222},
                                              {66, 222},
                                              {188, 352},
                                              {140, 360},
                                              {228, 262},
                                              {258, 262},
                                              {312, 306},
                                              {500, 276},
                                              {540, 270},
                                              {640, 262},
                                              {722, 300}}};
  for (const Point at : kAsleep)
    sheet.cut(blade::box(at.x, at.y, 20, 30), kDeep, 0.7);
}

void road(Sheet &sheet) {
  sheet.cut({{-9, kPavement}, {770, kPavement - 3}, {770, 600}, {-9, 600}}, kBlack, 1);
  sheet.cut({{-9, kPavement}, {770, kPavement - 3}, {770, kPavement + 3}, {-9, kPavement + 6}},
            kWhite, 0.6);
  // Windows and bus lie again in the wet, broken up.
  for (int i = 0; i < 54; ++i) {
    const double x = sheet.dice().between(226, 580);
    const double y = sheet.dice().between(514, 566);
    const double length = sheet.dice().between(12, 40);
    sheet.cut(blade::gouge({x, y}, {x + length, y}, 3.2), i % 3 == 0 ? kYellow : kTomato, 0.3);
  }
}

} // namespace

// A street at ten past two, laid across the staples: one window in each house is awake.
Sheet street() {
  Sheet sheet(2 * kLiveWidth, kLiveHeight, 13);
  sheet.cut(blade::box(-9, -9, 780, 600), kDeep, 0);
  for (int i = 0; i < 60; ++i) {
    const double x = sheet.dice().between(0, 760);
    const double y = sheet.dice().between(4, 250);
    if (x < 330 && y < 130)
      continue; // the headline stands there
    sheet.cut(blade::disc({x, y}, 1.2, 1.2, 5), kWhite, 0.2);
  }
  sheet.cut(blade::disc({664, 104}, 58, 58, 22), kYellow, 1);
  sheet.cut(blade::disc({640, 92}, 52, 52, 21), kDeep, 1);
  for (const House &house : {House{-20, 128, 196, 150, kBlack}, House{206, 90, 238, 196, kBlack},
                             House{100, 114, 226, 226, kWhite}, House{352, 144, 236, 186, kTomato},
                             House{290, 92, 204, 204, kBlack}, House{490, 104, 250, 214, kBlack},
                             House{700, 90, 270, 230, kBlack}, House{588, 116, 238, 238, kWhite}}) {
    build(sheet, house);
  }
  sheet.cut({{96, 226}, {218, 224}, {218, 234}, {96, 236}}, kBlack, 0.6);
  sheet.cut({{584, 238}, {708, 236}, {708, 246}, {584, 248}}, kBlack, 0.6);
  dark_windows(sheet);
  reader(sheet);
  ladder(sheet);
  cellist(sheet);
  cat(sheet);
  dancers(sheet);
  baby(sheet);
  baker(sheet);
  road(sheet);
  bus_side(sheet, {560, 512}, 326, {kTomato, kBlack, kWhite, kYellow, kWhite, kBlack});
  return sheet;
}
