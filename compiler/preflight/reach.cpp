#include "preflight/reach.hpp"

#include <algorithm>

namespace bodkin {
namespace {

Extent extent_of_polygon(const Polygon &polygon) {
  Extent extent{polygon.front().x, polygon.front().y, polygon.front().x, polygon.front().y};
  for (const Point &p : polygon) {
    extent.left = std::min(extent.left, p.x);
    extent.top = std::min(extent.top, p.y);
    extent.right = std::max(extent.right, p.x);
    extent.foot = std::max(extent.foot, p.y);
  }
  return extent;
}

// Cuts a polygon at one edge of a box (Sutherland and Hodgman's way).
template <typename Inside, typename Cross>
Polygon cut(const Polygon &polygon, Inside inside, Cross cross) {
  Polygon kept;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
    if (inside(a))
      kept.push_back(a);
    if (inside(a) != inside(b))
      kept.push_back(cross(a, b));
  }
  return kept;
}

Point at_x(const Point &a, const Point &b, double x) {
  return {x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)};
}
Point at_y(const Point &a, const Point &b, double y) {
  return {a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y), y};
}

Polygon within(Polygon polygon, const Box &box) {
  const double left = box.x.in_points(), top = box.y.in_points();
  const double right = box.right().in_points(), foot = box.foot().in_points();
  polygon = cut(
      polygon, [&](const Point &p) { return p.x >= left; },
      [&](const Point &a, const Point &b) { return at_x(a, b, left); });
  polygon = cut(
      polygon, [&](const Point &p) { return p.x <= right; },
      [&](const Point &a, const Point &b) { return at_x(a, b, right); });
  polygon = cut(
      polygon, [&](const Point &p) { return p.y >= top; },
      [&](const Point &a, const Point &b) { return at_y(a, b, top); });
  return cut(
      polygon, [&](const Point &p) { return p.y <= foot; },
      [&](const Point &a, const Point &b) { return at_y(a, b, foot); });
}

std::optional<Extent> picture_ink(const Inspection &inspection, const Item &item,
                                  const SetPicture &set) {
  const auto &picture = std::get<Picture>(inspection.edition[item.element].what);
  const auto &hull = inspection.gallery.ink(picture);
  if (!hull)
    return extent_of(item);
  Polygon ink;
  for (const art::ShareSpot &spot : *hull)
    ink.push_back({set.whole.x.in_points() + spot.x * set.whole.width.in_points(),
                   set.whole.y.in_points() + spot.y * set.whole.height.in_points()});
  ink = within(std::move(ink), set.window);
  if (ink.empty())
    return std::nullopt;
  for (Point &p : ink)
    p = item.to_page(p);
  return extent_of_polygon(ink);
}

} // namespace

Past past(const Extent &extent, const Box &box) {
  const auto over = [](double points) {
    const Length length = Length::nearest_points(points);
    return length > Length{} && length <= least_past ? Length{} : length;
  };
  return {over(box.x.in_points() - extent.left), over(box.y.in_points() - extent.top),
          over(extent.right - box.right().in_points()), over(extent.foot - box.foot().in_points())};
}

bool any(const Past &past) {
  return std::any_of(past.begin(), past.end(), [](Length l) { return l > Length{}; });
}

std::size_t worst(const Past &past) {
  return static_cast<std::size_t>(std::max_element(past.begin(), past.end()) - past.begin());
}

Past largest(const Past &a, const Past &b) {
  Past all;
  for (std::size_t i = 0; i < all.size(); ++i)
    all[i] = std::max(a[i], b[i]);
  return all;
}

Past mirrored(const Past &past) { return {past[2], past[1], past[0], past[3]}; }

std::optional<Extent> ink_extent(const Inspection &inspection, const Item &item, const Box &safe) {
  std::optional<Extent> extent = extent_of(item);
  const auto *picture = std::get_if<SetPicture>(&item.what);
  if (picture && extent && any(past(*extent, safe)))
    return picture_ink(inspection, item, *picture);
  return extent;
}

} // namespace bodkin
