#include "preflight/shown.hpp"

namespace bodkin {
namespace {

bool inside_box(const Box &box, const Point &p) {
  return p.x >= box.x.in_points() && p.x <= box.right().in_points() && p.y >= box.y.in_points() &&
         p.y <= box.foot().in_points();
}

} // namespace

Point back(const Transform &map, const Point &p) {
  const double x = p.x - map.x0, y = p.y - map.y0;
  const double size = map.xx * map.yy - map.xy * map.yx;
  return {(map.yy * x - map.xy * y) / size, (map.xx * y - map.yx * x) / size};
}

std::optional<double> shown_at(const Inspection &inspection, const Item &item, const Point &spot,
                               double under) {
  const Point p = back(item.to_page, spot);
  if (const auto *fill = std::get_if<SetFill>(&item.what)) {
    if (!inside_box(item.place, p))
      return std::nullopt;
    const double share = fill->share.value();
    return luminance(fill->paint.colour) * share + under * (1 - share);
  }
  const auto *set = std::get_if<SetPicture>(&item.what);
  if (!set || !inside_box(set->window, p))
    return std::nullopt;
  const auto &picture = std::get<Picture>(inspection.edition[item.element].what);
  const auto &grid = inspection.gallery.luminance(picture);
  if (!grid)
    return std::nullopt;
  const double u = (p.x - set->whole.x.in_points()) / set->whole.width.in_points();
  const double v = (p.y - set->whole.y.in_points()) / set->whole.height.in_points();
  return art::mean_luminance(*grid, {u, v, u, v}, under);
}

} // namespace bodkin
