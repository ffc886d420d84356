#include "knife/drawings.hpp"

using blade::Point;

Sheet lost_glove() {
  Sheet sheet(96, 96, 111);
  sheet.cut(blade::round({{24, 62}, {20, 44}, {16, 26}, {18, 19}, {24, 20}, {29, 38}, {32, 40},
                          {31, 18}, {34, 8},  {40, 9},  {42, 38}, {45, 38}, {48, 10}, {54, 6},
                          {58, 11}, {55, 40}, {58, 42}, {66, 20}, {72, 18}, {75, 24}, {68, 48},
                          {70, 54}, {80, 46}, {87, 46}, {86, 54}, {72, 72}, {62, 76}, {34, 76}},
                         2),
            kBlack, 0.4);
  sheet.cut({{31, 78}, {65, 77}, {68, 93}, {29, 94}}, kBlack, 0.6);
  for (int i = 0; i < 6; ++i) {
    sheet.cut(blade::gouge({35.0 + 5.4 * i, 91}, {35.4 + 5.2 * i, 79}, 1.9), kWhite, 0.2);
  }
  // Knitted: rows of small stitches over the back of the hand.
  for (int row = 0; row < 5; ++row) {
    for (int i = 0; i < 5; ++i) {
      const double x = 34.0 + 6.4 * i + (row % 2) * 2.6;
      const double y = 47.0 + 5.6 * row;
      sheet.cut(blade::strip({{x - 1.8, y - 1.8}, {x, y}, {x + 1.8, y - 1.8}}, 1.2, 1.2), kWhite,
                0.1);
    }
  }
  return sheet;
}

Sheet lost_boot() {
  Sheet sheet(96, 96, 112);
  sheet.cut(
      {{30, 6}, {58, 4}, {60, 44}, {66, 54}, {84, 60}, {91, 70}, {91, 80}, {30, 80}, {28, 48}},
      kBlack, 0.9);
  sheet.cut({{28, 83}, {92, 83}, {92, 89}, {54, 89}, {52, 92}, {29, 92}}, kBlack, 0.6);
  sheet.cut({{33, 11}, {55, 9.4}, {55.4, 13}, {33.4, 14.6}}, kWhite, 0.3);
  for (int i = 0; i < 5; ++i) {
    const double y = 22.0 + 7.4 * i;
    const double x = i == 4 ? 51 : 47;
    sheet.cut(blade::strip({{x, y}, {x + 10, y + 2.6}}, 2, 1.6), kWhite, 0.2);
  }
  sheet.cut(blade::strip(blade::bend({{58, 22}, {70, 18}, {74, 28}, {66, 38}}), 2.2, 1.8), kBlack,
            0.2);
  sheet.cut(blade::strip(blade::bend({{78, 62}, {72, 68}, {72, 79}}), 1.6, 2.2), kWhite, 0.2);
  sheet.cut(blade::gouge({33, 74}, {34, 52}, 2.4), kWhite, 0.2);
  return sheet;
}

Sheet lost_hat() {
  Sheet sheet(96, 96, 113);
  sheet.cut({{24, 62}, {28, 34}, {36, 24}, {46, 29}, {56, 23}, {67, 30}, {73, 60}}, kBlack, 0.8);
  sheet.cut({{25, 58}, {73, 56}, {74, 62}, {24, 64}}, kWhite, 0.3);
  sheet.cut(blade::round({{2, 62},
                          {14, 63},
                          {26, 67},
                          {50, 69},
                          {72, 66},
                          {84, 60},
                          {95, 57},
                          {90, 68},
                          {74, 76},
                          {48, 80},
                          {22, 77},
                          {8, 71}},
                         2),
            kBlack, 0.4);
  sheet.cut(blade::gouge({34, 50}, {39, 32}, 2.8), kWhite, 0.2);
  sheet.cut(blade::gouge({48, 48}, {47, 34}, 2.8), kWhite, 0.2);
  sheet.cut({{66, 57}, {70, 36}, {80, 22}, {78, 40}, {72, 57}}, kBlack, 0.3);
  sheet.cut(blade::gouge({71, 52}, {77, 28}, 1.6), kWhite, 0.1);
  return sheet;
}

Sheet lost_spectacles() {
  Sheet sheet(96, 96, 114);
  for (const double x : {26.0, 70.0}) {
    sheet.cut_open({blade::disc({x, 54}, 19, 17, 14), blade::disc({x, 54}, 13.6, 12, 13)}, kBlack,
                   0.5);
  }
  sheet.cut(blade::strip(blade::bend({{43, 52}, {48, 48}, {53, 52}}), 4.4, 4.4), kBlack, 0.2);
  sheet.cut(blade::strip(blade::bend({{8, 50}, {14, 32}, {30, 24}, {38, 28}}), 4, 3), kBlack, 0.2);
  sheet.cut(blade::strip(blade::bend({{88, 50}, {82, 32}, {66, 24}, {58, 28}}), 4, 3), kBlack, 0.2);
  // One lens is cracked.
  sheet.cut(blade::strip({{62, 45}, {68, 53}, {66, 57}, {74, 64}}, 1.4, 1.4), kBlack, 0.1);
  sheet.cut(blade::strip({{68, 53}, {78, 49}}, 1.2, 1.2), kBlack, 0.1);
  sheet.cut(blade::gouge({20, 60}, {28, 46}, 2.2), kBlack, 0.1);
  sheet.cut(blade::gouge({26, 61}, {32, 50}, 1.6), kBlack, 0.1);
  return sheet;
}

Sheet lost_umbrella() {
  Sheet sheet(96, 96, 115);
  // Blown inside out, which is how most of them arrive.
  sheet.cut(blade::strip({{48, 40}, {49, 82}}, 3.6, 3.6), kBlack);
  sheet.cut(blade::strip(blade::bend({{49, 80}, {49, 90}, {57, 92}, {61, 84}}), 4.2, 4.2), kBlack,
            0.2);
  sheet.cut({{4, 6},
             {16, 22},
             {24, 8},
             {34, 26},
             {46, 10},
             {58, 27},
             {70, 6},
             {78, 20},
             {93, 8},
             {80, 32},
             {64, 44},
             {48, 50},
             {32, 44},
             {16, 30}},
            kBlack, 0.8);
  for (const Point tip : {Point{16, 26}, Point{34, 30}, Point{58, 31}, Point{78, 24}}) {
    sheet.cut(blade::gouge({48, 48}, tip, 2.2), kWhite, 0.1);
  }
  return sheet;
}
