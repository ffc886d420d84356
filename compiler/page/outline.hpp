// Where an item's ink truly is on its page: turned matter by its true outline, words by their
// glyphs, pictures by their window.
#pragma once

#include "page/drawing.hpp"

#include <optional>
#include <vector>

namespace bodkin {

// Polygons in points on the page, before any shift for creep. Words give one for each line, every
// other thing one; what leaves no ink gives none.
std::vector<Polygon> outlines_of(const Item &item);

// Round all of them; none where nothing is drawn.
struct Extent {
  double left = 0, top = 0, right = 0, foot = 0; // points
};
std::optional<Extent> extent_of(const Item &item);

// One line's ink as it lies on the page.
Polygon outline_of_line(const Line &line, const Box &place, const Transform &to_page);

bool leaves_ink(const Item &item);
bool is_coloured(const Item &item);

} // namespace bodkin
