#include "knife/drawings.hpp"

using blade::Point;

namespace {

constexpr double kSide = 96; // each thing lies on a square of an inch and a third

Sheet chess_knight() {
  Sheet sheet(kSide, kSide, 101);
  sheet.cut({{22, 92}, {24, 82}, {72, 82}, {75, 92}}, kBlack);
  sheet.cut({{29, 79}, {31, 70}, {66, 70}, {69, 79}}, kBlack);
  sheet.cut({{34, 68},
             {36, 56},
             {46, 44},
             {34, 48},
             {25, 54},
             {17, 50},
             {16, 42},
             {30, 26},
             {34, 16},
             {40, 5},
             {46, 14},
             {60, 20},
             {69, 34},
             {70, 50},
             {66, 68}},
            kBlack, 0.9);
  sheet.cut({{34, 26}, {40, 24}, {41, 28}, {36, 30}}, kWhite, 0.2);
  sheet.cut(blade::disc({21, 45}, 1.8, 1.6, 6), kWhite, 0.1);
  for (int i = 0; i < 6; ++i) {
    const double y = 22.0 + 7 * i;
    sheet.cut(blade::gouge({52.0 + i, y}, {62.0 + i * 0.9, y + 5}, 2.6), kWhite, 0.2);
  }
  sheet.cut(blade::gouge({40, 62}, {60, 63}, 2.4), kWhite, 0.2);
  return sheet;
}

Sheet keys() {
  Sheet sheet(kSide, kSide, 102);
  sheet.cut_open({blade::disc({30, 30}, 21, 21, 16), blade::disc({30, 30}, 16, 16, 15)}, kBlack);
  sheet.cut(blade::strip({{40, 42}, {56, 86}}, 5, 5), kBlack);
  sheet.cut({{53, 72}, {63, 68}, {65, 73}, {56, 76}}, kBlack, 0.3);
  sheet.cut({{56, 80}, {66, 76}, {68, 82}, {58, 86}}, kBlack, 0.3);
  sheet.cut(blade::strip({{45, 38}, {84, 62}}, 5, 5), kBlack);
  sheet.cut({{70, 58}, {64, 67}, {68, 70}, {74, 60}}, kBlack, 0.3);
  sheet.cut({{79, 62}, {74, 71}, {78, 74}, {84, 64}}, kBlack, 0.3);
  sheet.cut({{26, 50}, {35, 50}, {38, 58}, {37, 88}, {22, 88}, {22, 58}}, kBlack);
  sheet.cut(blade::disc({30, 57}, 2.4, 2.4, 7), kWhite, 0.2);
  sheet.cut(blade::gouge({30, 66}, {30, 84}, 3), kWhite, 0.2);
  return sheet;
}

Sheet goldfish() {
  Sheet sheet(kSide, kSide, 103);
  // A bag of water, tied.
  sheet.cut_open({{{40, 4},
                   {56, 4},
                   {51, 16},
                   {62, 24},
                   {80, 44},
                   {86, 68},
                   {74, 88},
                   {48, 93},
                   {22, 88},
                   {10, 68},
                   {16, 44},
                   {34, 24},
                   {45, 16}},
                  {{48, 20},
                   {58, 26},
                   {75, 46},
                   {81, 67},
                   {71, 83},
                   {48, 88},
                   {25, 83},
                   {15, 67},
                   {21, 46},
                   {38, 26}}},
                 kBlack, 0.6);
  sheet.cut({{18, 48},
             {30, 45},
             {48, 48},
             {66, 44},
             {78, 48},
             {78, 51},
             {66, 47.6},
             {48, 51.4},
             {30, 48.4},
             {17, 51}},
            kBlack, 0.2);
  sheet.cut(blade::round({{28, 66}, {36, 58}, {50, 57}, {61, 65}, {50, 74}, {36, 74}}), kBlack,
            0.3);
  sheet.cut({{58, 65}, {73, 55}, {70, 66}, {74, 77}}, kBlack, 0.5);
  sheet.cut(blade::disc({35, 64}, 2.2, 2.2, 7), kWhite, 0.1);
  sheet.cut(blade::gouge({43, 60}, {43, 71}, 2), kWhite, 0.1);
  sheet.cut(blade::gouge({49, 61}, {48, 70}, 2), kWhite, 0.1);
  sheet.cut_open({blade::disc({26, 56}, 2.6, 2.6, 8), blade::disc({26, 56}, 1.3, 1.3, 7)}, kBlack,
                 0.1);
  return sheet;
}

Sheet alarm_clock() {
  Sheet sheet(kSide, kSide, 104);
  sheet.cut(blade::strip({{28, 76}, {20, 90}}, 7, 5), kBlack);
  sheet.cut(blade::strip({{68, 76}, {76, 90}}, 7, 5), kBlack);
  sheet.cut({{10, 30}, {12, 18}, {24, 9}, {34, 14}}, kBlack);
  sheet.cut({{86, 30}, {84, 18}, {72, 9}, {62, 14}}, kBlack);
  sheet.cut(blade::box(45, 8, 6, 12), kBlack);
  sheet.cut(blade::disc({48, 50}, 36, 36, 18), kBlack);
  sheet.cut(blade::disc({48, 50}, 28, 28, 17), kWhite);
  for (int hour = 0; hour < 12; ++hour) {
    sheet.cut(
        blade::turned(blade::box(46.6, 24, 2.8, hour % 3 == 0 ? 8 : 4), 30.0 * hour, {48, 50}),
        kBlack, 0.2);
  }
  // Ten past two.
  sheet.cut(blade::turned({{45.6, 54}, {47, 33}, {49, 33}, {50.4, 54}}, 65, {48, 50}), kBlack, 0.2);
  sheet.cut(blade::turned({{46.4, 56}, {47.4, 26}, {48.6, 26}, {49.6, 56}}, 60, {48, 50}), kBlack,
            0.2);
  sheet.cut(blade::disc({48, 50}, 3.4, 3.4, 8), kBlack, 0.2);
  return sheet;
}

} // namespace

Sheet lost_glove();
Sheet lost_boot();
Sheet lost_hat();
Sheet lost_spectacles();
Sheet lost_umbrella();
Sheet lost_teapot();
Sheet lost_jar();
Sheet lost_cactus();

std::vector<Drawing> lost_things() {
  return {
      {"lost-glove", lost_glove()},
      {"lost-teapot", lost_teapot()},
      {"lost-knight", chess_knight()},
      {"lost-umbrella", lost_umbrella()},
      {"lost-goldfish", goldfish()},
      {"lost-keys", keys()},
      {"lost-boot", lost_boot()},
      {"lost-jar", lost_jar()},
      {"lost-spectacles", lost_spectacles()},
      {"lost-clock", alarm_clock()},
      {"lost-hat", lost_hat()},
      {"lost-cactus", lost_cactus()},
  };
}
