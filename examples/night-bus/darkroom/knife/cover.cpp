#include "knife/drawings.hpp"

// The night bus comes straight at the reader. Its destination blind is left white: the maker
// stamps a moon into it, by hand, on every copy.
Sheet cover() {
  Sheet sheet(kLiveWidth, kLiveHeight, 11);
  sheet.cut(blade::box(-9, -9, 396, 594), kDeep, 0);

  // Beams first, so that the bus stands in front of its own light.
  sheet.cut({{92, 470}, {-20, 408}, {-20, 600}, {104, 600}}, kYellow, 2);
  sheet.cut({{286, 470}, {400, 420}, {400, 600}, {268, 600}}, kYellow, 2);
  sheet.cut({{120, 500}, {60, 600}, {330, 600}, {262, 500}}, kYellow, 2);

  for (int i = 0; i < 46; ++i) {
    const double x = sheet.dice().between(-10, 400);
    const double y = sheet.dice().between(262, 470);
    const double length = sheet.dice().between(10, 26);
    sheet.cut(blade::gouge({x, y}, {x - length * 0.3, y + length}, 2.2), kWhite, 0.3);
  }
  const Inks inks{kTomato, kDeep, kWhite, kYellow};
  bus_front(sheet, {189, 566}, 262, inks, true);
  return sheet;
}
