#include "knife/drawings.hpp"

using blade::Line;
using blade::Point;
using blade::Shape;

namespace {

constexpr double kSide = 100;

Sheet paper() { return Sheet(kSide, kSide, 21); }

// A sheet of paper as a diagram shows it: a black edge, white within.
void leaf(Sheet &sheet, const Shape &shape, const std::string &face) {
  for (std::size_t i = 0; i < shape.size(); ++i) {
    if (i == 0)
      sheet.cut(shape, face, 0.2);
    sheet.draw({shape[i], shape[(i + 1) % shape.size()]}, 2.4, kBlack, 0.2);
  }
}

void fold_line(Sheet &sheet, Point from, Point to) {
  for (int i = 0; i < 7; ++i) {
    const auto at = [&](double share) {
      return Point{from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
    };
    sheet.draw({at(i / 7.0 + 0.02), at(i / 7.0 + 0.1)}, 1.6, kBlack, 0.1);
  }
}

void arrow(Sheet &sheet, const Line &along) {
  const Line path = blade::bend(along, 5);
  sheet.cut(blade::strip(path, 1.6, 2.4), kBlack, 0.1);
  const Point tip = path.back();
  const Point before = path[path.size() - 3];
  const double dx = tip.x - before.x;
  const double dy = tip.y - before.y;
  sheet.cut({{tip.x + dx * 0.8, tip.y + dy * 0.8},
             {tip.x - dy * 0.6, tip.y + dx * 0.6},
             {tip.x + dy * 0.6, tip.y - dx * 0.6}},
            kBlack, 0.1);
}

Sheet ticket() {
  Sheet sheet = paper();
  leaf(sheet, {{20, 6}, {80, 6}, {80, 94}, {20, 94}}, kWhite);
  fold_line(sheet, {20, 50}, {80, 50});
  arrow(sheet, {{66, 14}, {92, 34}, {92, 62}, {72, 82}});
  return sheet;
}

Sheet corners() {
  Sheet sheet = paper();
  leaf(sheet, {{10, 26}, {90, 26}, {90, 80}, {10, 80}}, kWhite);
  fold_line(sheet, {50, 26}, {50, 80});
  fold_line(sheet, {50, 26}, {10, 66});
  fold_line(sheet, {50, 26}, {90, 66});
  arrow(sheet, {{14, 30}, {28, 16}, {42, 34}, {44, 54}});
  arrow(sheet, {{86, 30}, {72, 16}, {58, 34}, {56, 54}});
  return sheet;
}

Sheet brims() {
  Sheet sheet = paper();
  leaf(sheet, {{14, 80}, {86, 80}, {86, 66}, {14, 66}}, kWhite);
  leaf(sheet, {{50, 18}, {90, 66}, {10, 66}}, kBlack);
  sheet.draw({{50, 22}, {50, 66}}, 2, kWhite, 0.2);
  arrow(sheet, {{30, 78}, {22, 62}, {34, 50}});
  arrow(sheet, {{70, 78}, {78, 62}, {66, 50}});
  sheet.draw({{14, 80}, {86, 80}}, 2.4, kBlack, 0.2);
  return sheet;
}

Sheet hat() {
  Sheet sheet = paper();
  leaf(sheet, {{50, 14}, {88, 62}, {12, 62}}, kBlack);
  leaf(sheet, {{6, 62}, {94, 62}, {86, 78}, {14, 78}}, kWhite);
  arrow(sheet, {{4, 44}, {12, 34}, {24, 30}});
  arrow(sheet, {{96, 44}, {88, 34}, {76, 30}});
  return sheet;
}

Sheet diamond() {
  Sheet sheet = paper();
  leaf(sheet, {{50, 10}, {90, 50}, {50, 90}, {10, 50}}, kWhite);
  fold_line(sheet, {10, 50}, {90, 50});
  leaf(sheet, {{50, 10}, {62, 22}, {38, 22}}, kBlack);
  arrow(sheet, {{40, 84}, {18, 78}, {14, 62}});
  arrow(sheet, {{60, 84}, {82, 78}, {86, 62}});
  return sheet;
}

Sheet boat() {
  Sheet sheet = paper();
  leaf(sheet, {{50, 20}, {70, 58}, {30, 58}}, kBlack);
  leaf(sheet, {{2, 44}, {30, 58}, {70, 58}, {98, 44}, {82, 78}, {18, 78}}, kWhite);
  for (int i = 0; i < 5; ++i) {
    const double x = -4.0 + 22 * i;
    sheet.cut(blade::strip(blade::bend({{x, 86}, {x + 6, 82}, {x + 12, 86}, {x + 20, 84}}), 1.6, 3),
              kBlack, 0.1);
  }
  return sheet;
}

} // namespace

std::vector<Drawing> boat_steps() {
  return {{"boat-1", ticket()}, {"boat-2", corners()}, {"boat-3", brims()},
          {"boat-4", hat()},    {"boat-5", diamond()}, {"boat-6", boat()}};
}
