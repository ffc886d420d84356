#include "sheet/strips.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace bodkin {
namespace {

// Clockwise from the left, in the page's upright frame and, turned, on the sheet as seen.
enum SheetEdgeAt { left, top, right, bottom };

struct Taken {
  Length depth; // from the page's edge inwards
  Length slack; // paper outside the page's edge, cut off with it
  bool fore_edge = false;
};

std::array<Taken, 4> cuts_of(const Place &place, const Trims &trims) {
  std::array<Taken, 4> cuts;
  const auto deep = [](Length trim, Length creep) {
    return trim > Length() ? trim + creep : Length();
  };
  cuts[top] = {deep(trims.head, {}), place.slack.top, false};
  cuts[bottom] = {deep(trims.foot, {}), place.slack.bottom, false};
  if (place.spine == SpineAt::left)
    cuts[right] = {deep(trims.fore_edge, place.creep), place.slack.right, true};
  else if (place.spine == SpineAt::right)
    cuts[left] = {deep(trims.fore_edge, place.creep), place.slack.left, true};
  return cuts;
}

Box clipped(const Box &box, const Box &within) {
  const Length x = std::max(box.x, within.x), y = std::max(box.y, within.y);
  return {x, y, std::max(Length(), std::min(box.right(), within.right()) - x),
          std::max(Length(), std::min(box.foot(), within.foot()) - y)};
}

Strip strip_along(const Box &page, int sheet_edge, const Taken &cut) {
  Strip strip;
  strip.lies_across = sheet_edge == top || sheet_edge == bottom;
  strip.edge_first = sheet_edge == left || sheet_edge == top;
  strip.fore_edge = cut.fore_edge;
  const Length all = cut.depth + cut.slack;
  switch (sheet_edge) {
  case left:
    strip.box = {page.x - cut.slack, page.y, all, page.height};
    strip.knife = page.x + cut.depth;
    break;
  case top:
    strip.box = {page.x, page.y - cut.slack, page.width, all};
    strip.knife = page.y + cut.depth;
    break;
  case right:
    strip.box = {page.right() - cut.depth, page.y, all, page.height};
    strip.knife = page.right() - cut.depth;
    break;
  default:
    strip.box = {page.x, page.foot() - cut.depth, page.width, all};
    strip.knife = page.foot() - cut.depth;
  }
  return strip;
}

Box clear_of_knife(const Strip &strip, Length clearance) {
  Box box = strip.box;
  (strip.lies_across ? box.height : box.width) -= clearance;
  if (!strip.edge_first)
    (strip.lies_across ? box.y : box.x) += clearance;
  return box;
}

} // namespace

std::vector<Strip> strips_cut_off(const Sheet &sheet, const Side &side, const Trims &trims,
                                  const Edges &bare, Length clearance) {
  const Box printed = inside(sheet.size, bare);
  std::vector<Strip> strips;
  for (std::size_t i = 0; i < side.places.size(); ++i) {
    const Place &place = side.places[i];
    const std::array<Taken, 4> cuts = cuts_of(place, trims);
    for (int edge = 0; edge < 4; ++edge) {
      const Taken &cut = cuts[static_cast<std::size_t>(edge)];
      if (cut.depth <= Length())
        continue;
      Strip strip = strip_along(place.box, (edge + place.turn / 90) % 4, cut);
      strip.place = static_cast<int>(i);
      strip.box = clipped(clear_of_knife(strip, clearance), printed);
      if (strip.box.width > Length() && strip.box.height > Length())
        strips.push_back(strip);
    }
  }
  return strips;
}

} // namespace bodkin
