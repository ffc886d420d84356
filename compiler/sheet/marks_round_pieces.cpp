#include "sheet/marks_round_pieces.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr Length longest = Length::inches(1, 8), shortest = Length::points(2);

Box round_all(const std::vector<Place> &places) {
  Length left = places.front().box.x, top = places.front().box.y;
  Length right = left, foot = top;
  for (const Place &place : places) {
    left = std::min(left, place.box.x);
    top = std::min(top, place.box.y);
    right = std::max(right, place.box.right());
    foot = std::max(foot, place.box.foot());
  }
  return {left, top, right - left, foot - top};
}

Strip margin(const Box &box, bool lies_across, bool edge_first) {
  Strip strip;
  strip.box = box;
  strip.lies_across = lies_across;
  strip.edge_first = edge_first;
  return strip;
}

// The end of a margin that is next to the pieces.
MarkLine beside(const Strip &margin, Length at) {
  const Box &box = margin.box;
  const Length depth = margin.lies_across ? box.height : box.width;
  const Length length = std::min(depth, longest);
  const Length outer = margin.lies_across ? box.y : box.x;
  const Length start = margin.edge_first ? outer + depth - length : outer;
  if (margin.lies_across)
    return {MarkLine::Kind::cut, {at, start}, {at, start + length}};
  return {MarkLine::Kind::cut, {start, at}, {start + length, at}};
}

} // namespace

std::vector<Strip> left_over(const Sheet &sheet, const Side &side, const Box &printed,
                             Length clearance) {
  if (sheet.cuts.empty() || side.places.empty())
    return {};
  const Box all = round_all(side.places);
  const Length top = all.y - clearance - printed.y, left = all.x - clearance - printed.x;
  const Length foot = printed.foot() - all.foot() - clearance;
  const Length right = printed.right() - all.right() - clearance;
  std::vector<Strip> margins{
      margin({printed.x, printed.y, printed.width, top}, true, true),
      margin({printed.x, all.foot() + clearance, printed.width, foot}, true, false),
      margin({printed.x, printed.y, left, printed.height}, false, true),
      margin({all.right() + clearance, printed.y, right, printed.height}, false, false)};
  margins.erase(std::remove_if(margins.begin(), margins.end(),
                               [](const Strip &strip) {
                                 return (strip.lies_across ? strip.box.height : strip.box.width) <
                                        shortest;
                               }),
                margins.end());
  return margins;
}

void mark_piece_cuts(Marks &marks, const Sheet &sheet, SideName side,
                     const std::vector<Strip> &margins) {
  for (const Sheet::FoldLine &cut : sheet.cuts) {
    const bool upright = cut.start.x == cut.end.x;
    Length at = upright ? cut.start.x : cut.start.y;
    if (side == SideName::back && upright == sheet.turns_upright)
      at = (upright ? sheet.size.width : sheet.size.height) - at;
    for (const Strip &strip : margins)
      if (strip.lies_across == upright)
        marks.lines.push_back(beside(strip, at));
  }
}

} // namespace bodkin
