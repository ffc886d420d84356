#include "knife/drawings.hpp"

using blade::Point;

Sheet lost_teapot() {
  Sheet sheet(96, 96, 121);
  sheet.cut(blade::round({{22, 80},
                          {16, 62},
                          {22, 44},
                          {34, 36},
                          {56, 36},
                          {68, 44},
                          {73, 62},
                          {67, 80},
                          {45, 84}},
                         3),
            kBlack, 0.5);
  sheet.cut({{66, 66}, {76, 60}, {82, 42}, {93, 34}, {90, 44}, {86, 60}, {76, 74}, {68, 78}},
            kBlack, 0.5);
  sheet.cut(blade::strip(blade::bend({{20, 50}, {8, 46}, {3, 58}, {9, 70}, {20, 72}}), 5, 5),
            kBlack, 0.3);
  sheet.cut({{31, 33}, {36, 26}, {54, 26}, {59, 33}}, kBlack, 0.5);
  sheet.cut(blade::disc({45, 20}, 5, 5, 8), kBlack, 0.3);
  sheet.cut({{30, 87}, {60, 87}, {62, 91}, {28, 91}}, kBlack, 0.4);
  // Painted with one flower.
  for (int i = 0; i < 6; ++i) {
    sheet.cut(blade::turned(blade::round({{45, 57}, {41, 50}, {45, 45}, {49, 50}}, 2), 60.0 * i,
                            {45, 60}),
              kWhite, 0.2);
  }
  sheet.cut(blade::disc({45, 60}, 3, 3, 7), kWhite, 0.2);
  sheet.cut(blade::gouge({24, 66}, {27, 48}, 2.6), kWhite, 0.2);
  return sheet;
}

Sheet lost_jar() {
  Sheet sheet(96, 96, 122);
  sheet.cut({{30, 6}, {66, 5}, {67, 17}, {29, 18}}, kBlack, 0.5);
  for (int i = 0; i < 6; ++i)
    sheet.cut(blade::gouge({34.0 + 5.6 * i, 15}, {34.0 + 5.6 * i, 8}, 1.6), kWhite, 0.1);
  sheet.cut_open({{{32, 21}, {64, 21}, {66, 28}, {76, 36}, {78, 90}, {18, 91}, {20, 36}, {30, 28}},
                  {{36, 24}, {60, 24}, {62, 31}, {72, 39}, {73, 86}, {23, 87}, {24, 39}, {34, 31}}},
                 kBlack, 0.5);
  sheet.cut({{26, 50}, {70, 49}, {71, 84}, {25, 85}}, kBlack, 0.6);
  // Slices of quince, and the pale ghost of a label.
  sheet.cut({{33, 58}, {63, 57}, {64, 76}, {33, 77}}, kWhite, 0.8);
  sheet.cut({{28, 52}, {38, 51.6}, {34, 55}}, kWhite, 0.2);
  sheet.cut({{52, 52}, {64, 51.4}, {58, 55}}, kWhite, 0.2);
  sheet.cut({{40, 80}, {52, 79}, {46, 83}}, kWhite, 0.2);
  sheet.cut(blade::gouge({66, 82}, {66.6, 56}, 1.8), kWhite, 0.1);
  return sheet;
}

Sheet lost_cactus() {
  Sheet sheet(96, 96, 123);
  sheet.cut({{30, 66}, {68, 66}, {64, 92}, {35, 92}}, kBlack, 0.6);
  sheet.cut({{26, 58}, {72, 58}, {72, 66}, {26, 66}}, kBlack, 0.5);
  sheet.cut({{28, 64}, {70, 63.4}, {70, 65}, {28, 65.6}}, kWhite, 0.1);
  sheet.cut(blade::round({{40, 58}, {39, 30}, {41, 12}, {49, 6}, {57, 12}, {58, 32}, {57, 58}}, 3),
            kBlack, 0.4);
  sheet.cut(blade::strip(blade::bend({{42, 46}, {28, 44}, {24, 34}, {25, 26}}), 9, 9), kBlack, 0.4);
  sheet.cut(blade::strip(blade::bend({{56, 38}, {70, 37}, {74, 28}, {73, 18}}), 9, 9), kBlack, 0.4);
  for (int i = 0; i < 6; ++i) {
    const double y = 16.0 + 7 * i;
    sheet.cut(blade::gouge({44, y}, {45, y + 4}, 1.5), kWhite, 0.1);
    sheet.cut(blade::gouge({53, y + 3}, {52, y + 7}, 1.5), kWhite, 0.1);
  }
  sheet.cut(blade::gouge({25, 36}, {25, 30}, 1.5), kWhite, 0.1);
  sheet.cut(blade::gouge({73, 28}, {73, 22}, 1.5), kWhite, 0.1);
  return sheet;
}
