#include "knife/drawings.hpp"

using blade::Point;

namespace {

// The lamps' light lies on the wet road in broken bars that widen towards the reader.
void lie_on_road(Sheet &sheet, double x, const std::string &colour) {
  double y = 396;
  double width = 20;
  while (y < 570) {
    const double height = sheet.dice().between(4, 9);
    const double aside = sheet.dice().between(-4, 4);
    sheet.cut({{x - width / 2 + aside, y},
               {x + width / 2 + aside, y + 1},
               {x + width / 2 - 3 + aside, y + height},
               {x - width / 2 + 4 + aside, y + height - 1}},
              colour, 0.6);
    y += height + sheet.dice().between(5, 10);
    width += sheet.dice().between(0.4, 3.4);
  }
}

void town(Sheet &sheet) {
  // Roofs on the skyline, one window awake.
  sheet.cut({{-10, 300}, {20, 276},  {52, 300},  {52, 288},  {84, 288},  {84, 262},  {92, 262},
             {92, 284},  {112, 292}, {132, 274}, {156, 300}, {200, 300}, {230, 282}, {262, 282},
             {262, 296}, {300, 270}, {338, 296}, {338, 278}, {390, 278}, {390, 352}, {-10, 352}},
            kBlack, 0.8);
  sheet.cut(blade::box(312, 300, 9, 13), kYellow, 0.5);
}

} // namespace

// The bus has gone by: what the cover's reader sees when the zine is turned over.
Sheet back() {
  Sheet sheet(kLiveWidth, kLiveHeight, 29);
  sheet.cut(blade::box(-9, -9, 396, 594), kDeep, 0);
  town(sheet);
  sheet.cut({{128, 350}, {248, 350}, {430, 600}, {-60, 600}}, kBlack, 1);
  for (const double y : {470.0, 560.0}) {
    sheet.cut(blade::gouge({186, y - 20}, {184, y}, 4), kDeep, 0.2);
  }
  lie_on_road(sheet, 138, kTomato);
  lie_on_road(sheet, 240, kTomato);

  // The bus from behind.
  sheet.cut({{130, 386}, {152, 386}, {151, 400}, {131, 400}}, kBlack);
  sheet.cut({{226, 386}, {248, 386}, {247, 400}, {227, 400}}, kBlack);
  sheet.cut({{122, 390},
             {121, 312},
             {124, 284},
             {134, 271},
             {160, 266},
             {189, 265},
             {218, 266},
             {244, 271},
             {254, 284},
             {257, 312},
             {256, 390}},
            kTomato);
  sheet.cut({{123, 340}, {124, 300}, {129, 286}, {249, 286}, {254, 300}, {255, 340}}, kWhite);
  sheet.cut({{136, 334}, {137, 296}, {141, 290}, {237, 290}, {241, 296}, {242, 334}}, kYellow);
  // Somebody looks back: ears, long nose.
  sheet.cut({{172, 334},
             {170, 318},
             {166, 300},
             {177, 308},
             {190, 308},
             {201, 300},
             {198, 318},
             {194, 334}},
            kTomato, 0.4);
  sheet.cut({{171, 318}, {184, 333}, {197, 318}, {192, 330}, {184, 334.5}, {176, 330}}, kWhite,
            0.2);
  sheet.cut(blade::disc({184, 331}, 2.6, 2.2, 6), kDeep, 0.1);
  sheet.cut(blade::disc({177.5, 318}, 1.7, 1.7, 6), kDeep, 0.1);
  sheet.cut(blade::disc({190.5, 318}, 1.7, 1.7, 6), kDeep, 0.1);
  sheet.cut({{122, 352}, {256, 352}, {256, 355}, {122, 355}}, kWhite, 0.3);
  sheet.cut({{166, 358}, {212, 358}, {212, 376}, {166, 376}}, kDeep, 0.4);
  sheet.cut(blade::disc({138, 370}, 8.5, 8.5, 10), kYellow, 0.4);
  sheet.cut(blade::disc({240, 370}, 8.5, 8.5, 10), kYellow, 0.4);
  sheet.cut(blade::disc({138, 370}, 5, 5, 8), kWhite, 0.2);
  sheet.cut(blade::disc({240, 370}, 5, 5, 8), kWhite, 0.2);
  sheet.cut({{118, 382}, {260, 382}, {261, 388}, {117, 388}}, kWhite, 0.5);

  for (int i = 0; i < 60; ++i) {
    const Point top{sheet.dice().between(-5, 390), sheet.dice().between(250, 560)};
    const double length = sheet.dice().between(8, 20);
    if (top.x > 100 && top.x < 275 && top.y > 240)
      continue;
    if (top.x > 295 && top.x < 340 && top.y < 330)
      continue;
    sheet.cut(blade::gouge(top, {top.x - length * 0.3, top.y + length}, 1.8), kWhite, 0.2);
  }
  return sheet;
}
