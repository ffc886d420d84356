// A leaflet broken into pages: words set, pictures, rules and boxes at their places. Points, y down
// from a page's top left.
#pragma once

#include "page/drawing.hpp"
#include "paperwork/leaflet.hpp"
#include "press/leaflet_type.hpp"

#include <vector>

namespace bodkin::press {

struct LeafletRule {
  double x1 = 0, y1 = 0, x2 = 0, y2 = 0, width = 1;
};
struct TickBox {
  double x = 0, y = 0, size = 0;
};
// `x`, `y`: where the top left of its frame stands; `scale` from real measures.
struct PlacedPicture {
  const paperwork::Shown *shown = nullptr;
  double x = 0, y = 0, scale = 1;
};

struct LeafletPage {
  std::vector<Item> words;
  std::vector<LeafletRule> rules;
  std::vector<TickBox> boxes;
  std::vector<PlacedPicture> pictures;
};

// The pictures point into `leaflet`.
std::vector<LeafletPage> lay_out(const paperwork::Leaflet &leaflet, LeafletType &type);

Item words_at(std::vector<Line> lines, double x, double y);

} // namespace bodkin::press
