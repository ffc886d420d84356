#include "press/placing.hpp"

namespace bodkin::press {

Transform page_to_sheet(const Place &place, const Size &page, const Size &sheet) {
  const double w = page.width.in_points(), h = page.height.in_points();
  Transform turned; // the page turned clockwise within its box
  switch (place.turn) {
  case 90:
    turned = {.xx = 0, .yx = 1, .xy = -1, .yy = 0, .x0 = h, .y0 = 0};
    break;
  case 180:
    turned = {.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = w, .y0 = h};
    break;
  case 270:
    turned = {.xx = 0, .yx = -1, .xy = 1, .yy = 0, .x0 = 0, .y0 = w};
    break;
  default:
    break;
  }
  const Transform upwards{
      .xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = sheet.height.in_points()};
  return upwards * Transform::moved(place.box.x, place.box.y) * turned;
}

Polygon page_corners(const Size &page) {
  return polygon_of({{}, {}, page.width, page.height}, Transform{});
}

Length shift_right(const Place &place) {
  if (place.spine == SpineAt::left)
    return -place.shift;
  return place.spine == SpineAt::right ? place.shift : Length{};
}

} // namespace bodkin::press
