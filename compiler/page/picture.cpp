#include "page/picture.hpp"

#include <algorithm>

namespace bodkin {
namespace {

struct Plain {
  double x, y, width, height;
};

Plain plain(const Box &box) {
  return {box.x.in_points(), box.y.in_points(), box.width.in_points(), box.height.in_points()};
}

Box exact(const Plain &box) {
  const auto length = [](double points) { return Length::nearest_points(points); };
  return {length(box.x), length(box.y), length(box.width), length(box.height)};
}

// The cropped picture at the least scale that covers the area, or the greatest that fits into it.
Plain scaled_to(const Plain &area, double aspect, bool covers) {
  const bool by_width = (area.width > area.height * aspect) == covers;
  return by_width ? Plain{0, 0, area.width, area.width / aspect}
                  : Plain{0, 0, area.height * aspect, area.height};
}

// Where a picture's start goes so that its focus is as near to the area's middle as the picture's
// edges allow.
double focused(double area_start, double area_extent, double extent, double focus) {
  const double wanted = area_start + area_extent / 2 - focus * extent;
  return std::clamp(wanted, area_start + area_extent - extent, area_start);
}

} // namespace

SetPicture stand(const Picture &picture, bool fills, double aspect, const Box &area) {
  if (area.width <= Length{} || area.height <= Length{} || !(aspect > 0))
    return {.whole = {area.x, area.y, {}, {}}, .window = {area.x, area.y, {}, {}}};
  const Crop crop = picture.crop ? **picture.crop : Crop{{0}, {0}, {1'000'000}, {1'000'000}};
  const double width = crop.width.value(), height = crop.height.value();
  const Plain room = plain(area);
  Plain seen = scaled_to(room, aspect * width / height, fills);
  if (fills) {
    const double across = (picture.focus->x.value() - crop.x.value()) / width;
    const double down = (picture.focus->y.value() - crop.y.value()) / height;
    seen.x = focused(room.x, room.width, seen.width, across);
    seen.y = focused(room.y, room.height, seen.height, down);
  } else {
    seen.x = room.x + (room.width - seen.width) / 2;
    seen.y = room.y + (room.height - seen.height) / 2;
  }
  const Plain whole{seen.x - crop.x.value() * seen.width / width,
                    seen.y - crop.y.value() * seen.height / height, seen.width / width,
                    seen.height / height};
  return {.whole = exact(whole), .window = fills ? area : exact(seen)};
}

} // namespace bodkin
