#include "knife/drawings.hpp"

using blade::Line;
using blade::Point;
using blade::Shape;

namespace {

const Point kTop{196, 30};

// One panel of the canopy: from the top down two ribs to their tips, and a scalloped hem.
void panel(Sheet &sheet, Point left, Point right, double bulge, const std::string &colour) {
  const auto rib = [&](Point tip, double out) {
    return blade::bend({kTop, {(kTop.x + tip.x) / 2 + out, (kTop.y + tip.y) / 2 - 34}, tip}, 6);
  };
  Shape shape = rib(left, (left.x - kTop.x) * 0.2);
  const Line hem =
      blade::bend({left, {(left.x + right.x) / 2, (left.y + right.y) / 2 - bulge}, right}, 5);
  shape.insert(shape.end(), hem.begin(), hem.end());
  const Line back = rib(right, (right.x - kTop.x) * 0.2);
  shape.insert(shape.end(), back.rbegin(), back.rend());
  sheet.cut(blade::turned(shape, -9, {189, 200}), colour, 0.8);
}

} // namespace

// The poster: an umbrella, whole, wanted back.
Sheet umbrella_poster() {
  Sheet sheet(kLiveWidth, kLiveHeight, 18);
  sheet.cut(blade::box(-9, -9, 396, 594), kYellow, 0);
  for (int i = 0; i < 90; ++i) {
    const double x = sheet.dice().between(-10, 390);
    const double y = sheet.dice().between(-20, 330);
    const double length = sheet.dice().between(16, 38);
    sheet.cut(blade::gouge({x, y}, {x - length * 0.3, y + length}, 3), kDeep, 0.3);
  }
  // Under the umbrella it is dry.
  sheet.cut(blade::turned({{40, 190}, {362, 190}, {330, 420}, {-8, 420}}, -9, {189, 200}), kYellow,
            0);
  const auto lean = [](const Shape &shape) { return blade::turned(shape, -9, {189, 200}); };
  sheet.cut(lean(blade::strip({{196, 14}, {196, 326}}, 8, 8)), kDeep);
  sheet.cut(lean(blade::strip(
                blade::bend({{196, 320}, {195, 350}, {210, 366}, {230, 360}, {236, 340}}), 14, 13)),
            kTomato, 0.5);
  panel(sheet, {22, 206}, {84, 210}, 14, kDeep);
  panel(sheet, {306, 210}, {370, 206}, 14, kDeep);
  panel(sheet, {84, 210}, {190, 214}, 22, kTomato);
  panel(sheet, {190, 214}, {306, 210}, 22, kWhite);
  return sheet;
}
