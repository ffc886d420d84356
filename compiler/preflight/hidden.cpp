// Art that nobody sees because something is glued on it: under a pocket, under a board, under the
// strip of glue of a leaf tipped in.
#include "page/outline.hpp"
#include "page/placement.hpp"
#include "preflight/about.hpp"
#include "preflight/copy.hpp"
#include "preflight/reach.hpp"
#include "sheet/glued_on.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

// Colour laid as a ground, lines and frames may run under what is glued on; what is read or looked
// at may not.
bool is_art(const Item &item) {
  return is_words(item) || std::holds_alternative<SetPicture>(item.what);
}

Box meet(const Extent &ink, const Box &box) {
  const Length left = std::max(Length::nearest_points(ink.left), box.x);
  const Length top = std::max(Length::nearest_points(ink.top), box.y);
  const Length right = std::min(Length::nearest_points(ink.right), box.right());
  const Length foot = std::min(Length::nearest_points(ink.foot), box.foot());
  return {left, top, right - left, foot - top};
}

bool some(const Box &box) { return box.width > least_past && box.height > least_past; }

Box round_both(const Box &a, const Box &b) {
  if (!some(a))
    return b;
  const Length x = std::min(a.x, b.x), y = std::min(a.y, b.y);
  return {x, y, std::max(a.right(), b.right()) - x, std::max(a.foot(), b.foot()) - y};
}

Extent extent_round(const Polygon &polygon) {
  Extent extent{polygon.front().x, polygon.front().y, polygon.front().x, polygon.front().y};
  for (const Point &p : polygon)
    extent = {std::min(extent.left, p.x), std::min(extent.top, p.y), std::max(extent.right, p.x),
              std::max(extent.foot, p.y)};
  return extent;
}

// What of an item's ink lies in a box: words line by line, a picture by its own ink.
Box hidden_of(const Inspection &inspection, const Item &item, const Box &box) {
  Box hidden;
  if (std::holds_alternative<SetPicture>(item.what)) {
    const auto ink = ink_extent(inspection, item, Box{});
    return ink ? meet(*ink, box) : hidden;
  }
  for (const Polygon &line : outlines_of(item))
    if (const Box in = meet(extent_round(line), box); some(in))
      hidden = round_both(hidden, in);
  return hidden;
}

std::string page_name(const GluedOn &glued) { return page_in_words(glued.host->piece, glued.page); }

std::string what_hides(const GluedOn &glued) {
  const Piece &piece = *glued.piece->piece;
  return piece.is_boards()   ? "the board glued there"
         : piece.is_pocket() ? fmt::format("the pocket {}", piece.name)
                             : fmt::format("the glue of {}", piece.name);
}

std::string reason(const Inspection &inspection, const GluedOn &glued) {
  if (glued.piece->piece->is_boards())
    return fmt::format("boards are glued over the whole of the front and the back: {} is not seen",
                       page_name(glued));
  const Box &box = glued.hides;
  const Ruler ruler = inspection.edition.ruler;
  return fmt::format("it is glued over {} x {} of {}, {} from its left and {} from its head",
                     rounded(box.width, ruler), rounded(box.height, ruler), page_name(glued),
                     rounded(box.x, ruler), rounded(box.y, ruler));
}

// The largest part of the live area beside what is glued there.
Box free_room(const Inspection &inspection, const GluedOn &glued) {
  const Box live = ground_of(inspection.edition, inspection.imposition, glued.page).live;
  const Box &taken = glued.hides;
  const Box beside[] = {{live.x, live.y, live.width, taken.y - live.y},
                        {live.x, taken.foot(), live.width, live.foot() - taken.foot()},
                        {live.x, live.y, taken.x - live.x, live.height},
                        {taken.right(), live.y, live.right() - taken.right(), live.height}};
  const auto area = [](const Box &box) {
    return std::max(box.width, Length{}).in_inches() * std::max(box.height, Length{}).in_inches();
  };
  return *std::max_element(std::begin(beside), std::end(beside),
                           [&](const Box &a, const Box &b) { return area(a) < area(b); });
}

void type_ways_out(const Inspection &inspection, const GluedOn &glued, const Item &item,
                   Problem &problem) {
  const Box room = free_room(inspection, glued);
  const Element &element = element_of(inspection, item);
  const auto *at = std::get_if<At>(&element.placement.where);
  if (glued.piece->piece->is_boards() || !some(room)) {
    problem.type = {{{}, "move it to another page; this one is for the glue"}};
    return;
  }
  const Ruler ruler = inspection.edition.ruler;
  const auto step = [](Length l) { return Length::inches(l.units() * 8 / Length::per_inch, 8); };
  const auto up = [&](Length l) { return step(l + Length::inches(1, 8) - Length::units(1)); };
  const Length x = up(room.x), y = up(room.y);
  Size size{step(room.right() - x), step(room.foot() - y)};
  if (at && at->size)
    size = {std::min(size.width, at->size->width), std::min(size.height, at->size->height)};
  problem.type = {{fmt::format("at       {} {}, {} x {}", written(x, ruler), written(y, ruler),
                               written(size.width, ruler), written(size.height, ruler)),
                   "where the page is free, or move the piece by its own `at`"}};
}

Problem hidden_art(const Inspection &inspection, const GluedOn &glued, const Item &item,
                   const Box &hidden) {
  const Ruler ruler = inspection.edition.ruler;
  Problem problem;
  problem.check = "hidden-art";
  problem.range = place_range(inspection, item);
  problem.message = fmt::format("{} x {} of the {} on {} lies under {}",
                                rounded(hidden.width, ruler), rounded(hidden.height, ruler),
                                name_of(inspection, item), page_name(glued), what_hides(glued));
  problem.why = reason(inspection, glued);
  problem.related = {{glued.piece->piece->range, "it is made here"}};
  type_ways_out(inspection, glued, item, problem);
  return problem;
}

void look_under(const CopyInspection &copy, const GluedOn &glued, Problems &problems) {
  const Inspection &inspection = copy.of(*glued.host);
  std::map<ItemKey, std::pair<const Item *, Box>> hidden; // a thing in columns is one thing
  for (const Item &item : inspection.drawings[glued.page].items) {
    if (!is_art(item) || !leaves_ink(item) || place_is_broken(inspection, item))
      continue;
    const Box under = hidden_of(inspection, item, glued.hides);
    if (!some(under))
      continue;
    auto &[first, box] = hidden[key_of(item)];
    first = first ? first : &item;
    box = round_both(box, under);
  }
  for (const auto &[key, found] : hidden)
    problems.push_back(hidden_art(inspection, glued, *found.first, found.second));
}

} // namespace

void check_hidden(const CopyInspection &copy, Problems &problems) {
  for (const GluedOn &glued : glued_on(copy.parts))
    look_under(copy, glued, problems);
}

} // namespace bodkin
