#include "page/outline.hpp"

#include <algorithm>
#include <cmath>

namespace bodkin {
namespace {

bool grey(const Colour &c) { return c.red == c.green && c.green == c.blue; }

template <typename... Ts>
struct Overloaded : Ts... {
  using Ts::operator()...;
};
template <typename... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

Polygon box_polygon(double left, double top, double right, double foot, const Transform &map) {
  return {map({left, top}), map({right, top}), map({right, foot}), map({left, foot})};
}

// A rule is a box as long as it and as thick as its width, at its own angle.
Polygon rule_polygon(const SetRule &rule, const Transform &map) {
  const Point a{rule.start.x.in_points(), rule.start.y.in_points()};
  const Point b{rule.end.x.in_points(), rule.end.y.in_points()};
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  if (length == 0)
    return {};
  const double half = rule.width.in_points() / 2;
  const Point across{-(b.y - a.y) / length * half, (b.x - a.x) / length * half};
  return {map({a.x + across.x, a.y + across.y}), map({b.x + across.x, b.y + across.y}),
          map({b.x - across.x, b.y - across.y}), map({a.x - across.x, a.y - across.y})};
}

std::vector<Polygon> words_polygons(const SetWords &words, const Item &item) {
  std::vector<Polygon> polygons;
  for (const Line &line : words.lines) {
    Polygon polygon = outline_of_line(line, item.place, item.to_page);
    if (!polygon.empty())
      polygons.push_back(std::move(polygon));
  }
  return polygons;
}

// Of words that stand straight the ink's own box is enough, and they are most of a book.
std::optional<Extent> extent_of_upright(const SetWords &words, const Item &item) {
  const InkBox ink = leaves_ink(item) ? ink_of(words.lines) : InkBox{};
  if (ink.empty())
    return std::nullopt;
  const Transform map = item.to_page * Transform::moved(item.place.x, item.place.y);
  const Point a = map({ink.left, ink.top}), b = map({ink.right, ink.foot});
  return Extent{std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

} // namespace

Polygon outline_of_line(const Line &line, const Box &place, const Transform &to_page) {
  const Transform map = to_page * Transform::moved(place.x, place.y);
  if (map.upright()) {
    const InkBox ink = ink_of(line);
    return ink.empty() ? Polygon{} : box_polygon(ink.left, ink.top, ink.right, ink.foot, map);
  }
  Polygon polygon;
  for (const GlyphRun &run : line.runs)
    for (const InkPoint &point : bodkin::outline_of(run))
      polygon.push_back(map({point.x, point.y}));
  return polygon;
}

bool leaves_ink(const Item &item) {
  return std::visit(
      Overloaded{
          [](const SetWords &words) {
            return std::any_of(words.lines.begin(), words.lines.end(), [](const Line &line) {
              return std::any_of(line.runs.begin(), line.runs.end(), [](const GlyphRun &run) {
                return !run.glyphs.empty() && !run.paint.is_white();
              });
            });
          },
          [](const SetPicture &) { return true; },
          [](const SetFill &fill) { return !fill.paint.is_white() && fill.share.millionths > 0; },
          [](const SetOutline &line) { return !line.paint.is_white() && line.width > Length{}; },
          [](const SetRule &rule) { return !rule.paint.is_white() && rule.width > Length{}; },
          [](const SetQr &qr) { return !qr.paint.is_white(); },
          [](const SetHand &) { return false; }, [](const SetMissing &) { return true; },
          [](const SetPasteUp &) { return true; }, // its copy carries what is glued
      },
      item.what);
}

bool is_coloured(const Item &item) {
  return std::visit(
      Overloaded{
          [](const SetWords &words) {
            return std::any_of(words.lines.begin(), words.lines.end(), [](const Line &line) {
              return std::any_of(line.runs.begin(), line.runs.end(),
                                 [](const GlyphRun &run) { return !grey(run.paint.colour); });
            });
          },
          [](const SetPicture &picture) { return picture.coloured; },
          [](const SetFill &fill) { return !grey(fill.paint.colour) && fill.share.millionths > 0; },
          [](const SetOutline &line) { return !grey(line.paint.colour); },
          [](const SetRule &rule) { return !grey(rule.paint.colour); },
          [](const SetQr &qr) { return !grey(qr.paint.colour); },
          [](const SetHand &) { return false; },
          [](const SetMissing &) { return false; },
          [](const SetPasteUp &) { return false; },
      },
      item.what);
}

std::vector<Polygon> outlines_of(const Item &item) {
  if (!leaves_ink(item))
    return {};
  return std::visit(
      Overloaded{
          [&](const SetWords &words) { return words_polygons(words, item); },
          [&](const SetPicture &picture) {
            return std::vector<Polygon>{polygon_of(picture.window, item.to_page)};
          },
          [&](const SetRule &rule) {
            return std::vector<Polygon>{rule_polygon(rule, item.to_page)};
          },
          [&](const auto &) { return std::vector<Polygon>{polygon_of(item.place, item.to_page)}; },
      },
      item.what);
}

std::optional<Extent> extent_of(const Item &item) {
  if (const auto *words = std::get_if<SetWords>(&item.what); words && item.to_page.upright())
    return extent_of_upright(*words, item);
  std::optional<Extent> extent;
  for (const Polygon &polygon : outlines_of(item))
    for (const Point &p : polygon) {
      if (!extent)
        extent = Extent{p.x, p.y, p.x, p.y};
      extent->left = std::min(extent->left, p.x);
      extent->top = std::min(extent->top, p.y);
      extent->right = std::max(extent->right, p.x);
      extent->foot = std::max(extent->foot, p.y);
    }
  return extent;
}

} // namespace bodkin
