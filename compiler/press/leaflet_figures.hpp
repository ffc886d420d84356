// The pictures of a leaflet in lines: sheets, copies and foldings with their measures. What lies
// below the lines (a page, a side of a sheet) is placed by others.
#pragma once

#include "press/fonts.hpp"
#include "press/leaflet_layout.hpp"

namespace bodkin::press {

// In points: the frame at a scale, and the room for measures beside it.
struct PictureRoom {
  double width = 0, height = 0, left = 0, above = 0, right = 0, below = 0;
};
PictureRoom room_of(const paperwork::Shown &shown, double scale);

void draw_picture(cairo_t *cairo, const PlacedPicture &picture, LeafletType &type, Fonts &fonts);

} // namespace bodkin::press
