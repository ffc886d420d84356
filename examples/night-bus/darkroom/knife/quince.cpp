#include "knife/drawings.hpp"

using blade::Point;
using blade::Shape;

// A quince cut in half, and the other half's skin behind it.
Sheet quince() {
  Sheet sheet(288, 252, 20);
  // Leaf and stalk.
  sheet.cut(blade::strip(blade::bend({{168, 44}, {172, 24}, {186, 8}}), 9, 6), kBlack, 0.4);
  sheet.cut(blade::round({{174, 34}, {196, 10}, {232, 2}, {268, 10}, {246, 30}, {212, 42}}, 3),
            kBlack, 0.6);
  sheet.cut(blade::gouge({182, 33}, {254, 13}, 3), kWhite, 0.2);
  for (int i = 0; i < 4; ++i) {
    const double x = 198.0 + 13 * i;
    sheet.cut(blade::gouge({x, 28.0 - 3.6 * i}, {x + 6, 17.0 - 3 * i}, 2), kWhite, 0.1);
    sheet.cut(blade::gouge({x, 29.0 - 3.6 * i}, {x + 11, 35.0 - 3.6 * i}, 2), kWhite, 0.1);
  }
  // The whole fruit, lobed and downy, lit from the left.
  sheet.cut(blade::round({{164, 42},
                          {186, 50},
                          {220, 60},
                          {256, 96},
                          {272, 144},
                          {258, 198},
                          {226, 234},
                          {188, 240},
                          {150, 232},
                          {120, 200},
                          {112, 140},
                          {128, 80},
                          {146, 52}},
                         4),
            kBlack, 0.7);
  for (int i = 0; i < 9; ++i) {
    const double y = 92.0 + 15 * i;
    sheet.cut(blade::gouge({248 - i * 0.8, y}, {226 - i * 1.4, y + 22}, 3), kWhite, 0.3);
    sheet.cut(blade::gouge({222 - i * 1.2, y - 8}, {206 - i * 1.2, y + 10}, 2.4), kWhite, 0.3);
  }
  // The half, in front: skin, flesh, core, pips.
  const Shape half = blade::round({{90, 76},
                                   {112, 84},
                                   {146, 106},
                                   {166, 146},
                                   {164, 196},
                                   {138, 232},
                                   {96, 246},
                                   {50, 236},
                                   {20, 202},
                                   {14, 150},
                                   {34, 106},
                                   {70, 84}},
                                  4);
  sheet.cut(blade::sized(half, 1.05, {90, 164}), kWhite, 0.5);
  sheet.cut(half, kBlack, 0.7);
  sheet.cut(blade::sized(half, 0.92, {90, 164}), kWhite, 0.7);
  sheet.cut(blade::round({{90, 112},
                          {112, 134},
                          {124, 164},
                          {112, 196},
                          {90, 216},
                          {68, 196},
                          {56, 164},
                          {68, 134}},
                         3),
            kBlack, 0.6);
  sheet.cut(blade::round({{90, 120},
                          {108, 138},
                          {117, 164},
                          {107, 192},
                          {90, 207},
                          {73, 192},
                          {63, 164},
                          {72, 138}},
                         3),
            kWhite, 0.5);
  for (int i = 0; i < 5; ++i) {
    const Shape pip =
        blade::round({{90, 134}, {96, 144}, {95, 156}, {90, 161}, {85, 156}, {84, 144}}, 2);
    sheet.cut(blade::turned(pip, 72.0 * i + 8, {90, 165}), kBlack, 0.3);
  }
  for (int i = 0; i < 13; ++i) {
    const Shape fleck = blade::gouge({90, 96}, {90, 108}, 2);
    sheet.cut(blade::turned(fleck, 27.7 * i + 14, {90, 164}), kBlack, 0.2);
  }
  return sheet;
}
