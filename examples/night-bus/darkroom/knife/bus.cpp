#include "knife/drawings.hpp"

using blade::Line;
using blade::Point;
using blade::Shape;

namespace {

// Drawn on a bus one hundred wide standing at (0, 0); this puts it where it is wanted.
struct Stand {
  Point foot;
  double scale;

  Point at(double x, double y) const { return {foot.x + x * scale, foot.y + y * scale}; }
  Shape operator()(Shape shape) const {
    for (Point &p : shape)
      p = at(p.x, p.y);
    return shape;
  }
};

void both(Sheet &sheet, const Stand &stand, const Shape &left, const std::string &colour) {
  sheet.cut(stand(left), colour);
  sheet.cut(stand(blade::mirrored(left, 0)), colour);
}

void windscreen(Sheet &sheet, const Stand &stand, const Inks &inks) {
  both(sheet, stand, {{-43, -47}, {-41, -74}, {-38, -78}, {-2, -80}, {-2, -46}}, inks.dark);
  // Light lies across the glass in two slanting cuts.
  sheet.cut(stand({{-37, -50}, {-26, -76}, {-22, -76.5}, {-33, -50}}), inks.light);
  sheet.cut(stand({{-18, -50}, {-11, -66}, {-9, -66}, {-16, -50}}), inks.light);
  sheet.cut(stand(blade::strip({{-4, -45}, {-24, -58}}, 1.6, 0.8)), inks.glow);
  // The driver: a cap, a head, two hands on a wheel.
  sheet.cut(stand({{13, -46}, {14, -57}, {19, -60}, {29, -60}, {34, -56}, {35, -46}}), inks.body);
  sheet.cut(stand(blade::disc({24, -64.5}, 5, 6, 9)), inks.glow);
  sheet.cut(stand({{10, -45}, {11, -51}, {27, -51}, {28, -45}}), inks.dark);
  sheet.cut(stand(blade::disc({13, -50}, 2.2, 2.2, 6)), inks.glow);
  sheet.cut(stand(blade::disc({25, -50}, 2.2, 2.2, 6)), inks.glow);
  sheet.cut(stand({{17.5, -67}, {19, -72}, {29, -72}, {30.5, -67}}), inks.body);
}

void nose(Sheet &sheet, const Stand &stand, const Inks &inks) {
  for (int i = 0; i < 5; ++i) {
    const double y = -33.0 + 4.6 * i;
    sheet.cut(stand({{-17.0 + i, y}, {17.0 - i, y}, {16.4 - i, y + 2.4}, {-16.4 + i, y + 2.4}}),
              inks.dark);
  }
  both(sheet, stand, blade::disc({-32, -24}, 9.6, 9.6, 13), inks.dark);
  both(sheet, stand, blade::disc({-32, -24}, 7.4, 7.4, 11), inks.glow);
  both(sheet, stand, blade::disc({-33.5, -25.5}, 2.6, 2.6, 7), inks.light);
  both(sheet, stand, blade::disc({-44, -37}, 2.4, 2.4, 8), inks.glow);
  sheet.cut(stand({{-49, -12}, {49, -12}, {51, -9}, {50, -4}, {-50, -4}, {-51, -9}}), inks.light);
  sheet.cut(stand({{-46, -8.6}, {46, -8.6}, {46, -7.4}, {-46, -7.4}}), inks.dark);
}

} // namespace

void bus_front(Sheet &sheet, Point middle_foot, double width, const Inks &inks, bool destination) {
  const Stand stand{middle_foot, width / 100};
  both(sheet, stand, {{-44, -8}, {-28, -8}, {-29, 1.5}, {-43, 1.5}}, inks.dark);
  // Mirrors on their arms.
  both(sheet, stand, blade::strip({{-47, -72}, {-54, -75}, {-56, -70}}, 1.4, 1.4), inks.dark);
  both(sheet, stand, {{-60, -71}, {-54, -71}, {-53, -56}, {-59, -57}}, inks.dark);
  // The painted shell, then the light band above the waist.
  sheet.cut(stand({{-50, -6},
                   {-51, -40},
                   {-49, -75},
                   {-46, -90},
                   {-40, -97},
                   {-26, -101},
                   {0, -102},
                   {26, -101},
                   {40, -97},
                   {46, -90},
                   {49, -75},
                   {51, -40},
                   {50, -6}}),
            inks.body);
  sheet.cut(stand({{-49, -42},
                   {-47.5, -74},
                   {-44.5, -82},
                   {0, -84},
                   {44.5, -82},
                   {47.5, -74},
                   {49, -42},
                   {20, -40.5},
                   {0, -36},
                   {-20, -40.5}}),
            inks.light);
  windscreen(sheet, stand, inks);
  if (destination) {
    sheet.cut(stand({{-25, -98.5}, {25, -98.5}, {26, -85.5}, {-26, -85.5}}), inks.dark);
    sheet.cut(stand({{-23, -97}, {23, -97}, {24, -87}, {-24, -87}}), inks.light);
  }
  nose(sheet, stand, inks);
}

// Seen from the side, driving to the right: length 100, height about 34.
void bus_side(Sheet &sheet, Point front_foot, double length, const Inks &inks) {
  const Stand stand{front_foot, length / 100};
  sheet.cut(stand({{-100, -5},
                   {-100.5, -24},
                   {-98, -31},
                   {-92, -34},
                   {-50, -35},
                   {-8, -34},
                   {-2.5, -30},
                   {-0.5, -20},
                   {0, -13},
                   {0, -5}}),
            inks.body);
  sheet.cut(stand({{-101, -20},
                   {-101, -24},
                   {-98.4, -31.4},
                   {-92, -34.6},
                   {-50, -35.6},
                   {-8, -34.6},
                   {-2, -30.6},
                   {0, -20}}),
            inks.roof);
  sheet.cut(stand({{-99.5, -16},
                   {-99, -25},
                   {-96.5, -30},
                   {-50, -31},
                   {-7, -30},
                   {-3.2, -28},
                   {-1.2, -17}}),
            inks.light);
  for (int i = 0; i < 6; ++i) {
    const double x = -96.5 + 13.6 * i;
    sheet.cut(stand({{x, -18}, {x + 0.6, -28.5}, {x + 11.4, -28.8}, {x + 11.6, -18}}), inks.glow);
  }
  sheet.cut(stand({{-14, -5}, {-14, -28.6}, {-8, -28.4}, {-7.6, -5}}), inks.dark);
  sheet.cut(stand({{-13, -18}, {-13, -27.4}, {-9, -27.2}, {-8.8, -18}}), inks.glow);
  sheet.cut(stand({{-6.2, -16}, {-6.4, -28}, {-4, -26.6}, {-2, -16}}), inks.glow);
  sheet.cut(stand({{-100, -12.4}, {-15, -12.8}, {-15, -11.6}, {-100, -11.2}}), inks.light);
  for (const double x : {-78.0, -24.0}) {
    sheet.cut(stand(blade::disc({x, -4.8}, 7.2, 7.2, 12)), inks.arch);
    sheet.cut(stand(blade::disc({x, -4.2}, 5.8, 5.8, 11)), inks.dark);
    sheet.cut(stand(blade::disc({x, -4.2}, 2.4, 2.4, 8)), inks.light);
  }
  sheet.cut(stand(blade::disc({-1.6, -9}, 1.7, 1.9, 8)), inks.glow);
}
