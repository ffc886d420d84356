#include "page/placement.hpp"
#include "preflight/about.hpp"
#include "preflight/edge_problems.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <map>

namespace bodkin {
namespace {

// Words nearer to a cut than this are read with unease: common practice, no source.
constexpr Length reading_room = Length::inches(1, 8);

// What the checks ask of one page, worked out once for all that stands on it.
struct PageEdges {
  int page = 0;
  Size size;
  LiveArea live;
  Box safe, margins;

  PageEdges(const Inspection &inspection, int number)
      : page(number), size(inspection.imposition.size_of(number)),
        live(live_area(inspection.edition, inspection.imposition, number)), safe(live.box(size)),
        margins(ground_of(inspection.edition, inspection.imposition, number).margins) {}

  // On a spread the fold is no edge for what crosses it.
  Box open_at_fold(Box box, const Item &item) const {
    if (!item.crosses_fold)
      return box;
    if (page % 2 == 0)
      return {box.x, box.y, size.width * 3, box.height};
    return {-size.width * 2, box.y, size.width * 2 + box.right(), box.height};
  }

  // What is left after the knife, less the room that reading asks, or the margins where they ask
  // less; the whole page where nothing is cut.
  Box readable() const {
    Edges edges{Length::inches(-100), Length::inches(-100), Length::inches(-100),
                Length::inches(-100)};
    const std::array<Length *, 4> asks{&edges.left, &edges.top, &edges.right, &edges.bottom};
    const std::array<Length, 4> margin{margins.x, margins.y, size.width - margins.right(),
                                       size.height - margins.foot()};
    for (std::size_t i = 0; i < asks.size(); ++i)
      if (live.edges[i].trim > Length{})
        *asks[i] = std::min(margin[i], live.edges[i].trim + live.edges[i].creep + reading_room);
    return inside(size, edges);
  }
};

bool fills_page(const Inspection &inspection, const Item &item) {
  const Placement &placement = inspection.edition[item.element].placement;
  return placement.fills && *placement.area == Area::page;
}

// What an item's `outline` and `fill` pass, the item itself passes: one problem is enough.
bool dressing(const Inspection &inspection, const Item &item) {
  const bool flat =
      std::holds_alternative<SetFill>(item.what) || std::holds_alternative<SetOutline>(item.what);
  return flat && !std::holds_alternative<Patch>(inspection.edition[item.element].what);
}

bool is_mirrored(const Element &element) {
  if (std::holds_alternative<Rule>(element.what) || std::holds_alternative<Lay>(element.what))
    return false;
  const auto *at = std::get_if<At>(&element.placement.where);
  return !at || at->across.from == From::outer || at->across.from == From::inner;
}

Fault fault_of(const Item &item, const Extent &extent, const PageEdges &edges) {
  const Box page{{}, {}, edges.size.width, edges.size.height};
  const Past off = past(extent, edges.open_at_fold(page, item));
  if (any(off))
    return {edges.page, EdgeTrouble::off_the_page, off};
  const Past unsafe = past(extent, edges.open_at_fold(edges.safe, item));
  if (any(unsafe))
    return {edges.page, EdgeTrouble::unsafe, unsafe};
  const Past unread = past(extent, edges.readable());
  if (is_words(item) && any(unread))
    return {edges.page, EdgeTrouble::near_the_knife, unread};
  return {};
}

// Safe, readable, and on its page: what is brought in by as much is silent ever after.
Past reach_of(const Item &item, const Extent &extent, const PageEdges &edges) {
  const Box page{{}, {}, edges.size.width, edges.size.height};
  const Past unsafe = largest(past(extent, edges.open_at_fold(edges.safe, item)),
                              past(extent, edges.open_at_fold(page, item)));
  return is_words(item) ? largest(unsafe, past(extent, edges.readable())) : unsafe;
}

// Words that run off their page are brought back to its margins.
Past place_reach_of(const Item &item, const Extent &ink, const PageEdges &edges) {
  const Polygon corners = polygon_of(item.place, item.to_page);
  Extent place{corners[0].x, corners[0].y, corners[0].x, corners[0].y};
  for (const Point &p : corners)
    place = {std::min(place.left, p.x), std::min(place.top, p.y), std::max(place.right, p.x),
             std::max(place.foot, p.y)};
  const Past reach = reach_of(item, place, edges);
  const bool off = any(past(ink, Box{{}, {}, edges.size.width, edges.size.height}));
  return off ? largest(reach, past(place, edges.margins)) : reach;
}

// A page larger than its place is told as a wrong size; its edges are no edges of paper.
bool hangs_over(const Inspection &inspection, int page) {
  const Edges &slack = inspection.imposition.place_of(page).slack;
  return std::min({slack.left, slack.top, slack.right, slack.bottom}) < -Length::mm(1) / 2;
}

using Matters = std::map<ItemKey, Matter>;

void look_at(const Inspection &inspection, const Item &item, const PageEdges &edges,
             Matters &matters) {
  if (!leaves_ink(item) || std::holds_alternative<SetMissing>(item.what) ||
      fills_page(inspection, item) || dressing(inspection, item) ||
      place_is_broken(inspection, item))
    return;
  const auto extent = ink_extent(inspection, item, edges.open_at_fold(edges.safe, item));
  if (!extent)
    return;
  const auto [found, first] = matters.try_emplace(key_of(item));
  Matter &matter = found->second;
  Past reach = reach_of(item, *extent, edges);
  if (first) {
    matter.item = &item;
    matter.mirrored = is_mirrored(element_of(inspection, item));
  }
  if (matter.mirrored && !outer_is_left(inspection, edges.page))
    reach = mirrored(reach);
  matter.reach = first ? reach : largest(matter.reach, reach);
  Past place = place_reach_of(item, *extent, edges);
  if (matter.mirrored && !outer_is_left(inspection, edges.page))
    place = mirrored(place);
  matter.place_reach = first ? place : largest(matter.place_reach, place);
  if (const Fault fault = fault_of(item, *extent, edges); fault.trouble != EdgeTrouble::none)
    matter.faults.push_back(fault);
}

// The worst trouble is told; what mends it mends the others as well.
void tell(const Inspection &inspection, Matter &matter, Problems &problems) {
  EdgeTrouble worst = EdgeTrouble::none;
  for (const Fault &fault : matter.faults)
    worst = std::max(worst, fault.trouble);
  std::erase_if(matter.faults, [&](const Fault &fault) { return fault.trouble != worst; });
  if (worst == EdgeTrouble::off_the_page)
    problems.push_back(off_the_page(inspection, matter));
  else if (worst == EdgeTrouble::unsafe)
    problems.push_back(unsafe_matter(inspection, matter));
  else if (worst == EdgeTrouble::near_the_knife)
    problems.push_back(near_the_knife(inspection, matter));
}

} // namespace

bool outer_is_left(const Inspection &inspection, int page) {
  // A spread's places count from its left page on both its pages.
  return inspection.edition.pages[static_cast<std::size_t>(page)].spread || page % 2 == 0;
}

void check_edges(const Inspection &inspection, Problems &problems) {
  Matters matters;
  for (int page = 1; page <= inspection.imposition.page_count; ++page) {
    if (inspection.drawings[page].items.empty())
      continue;
    const PageEdges edges(inspection, page);
    if (hangs_over(inspection, page))
      continue;
    for (const Item &item : inspection.drawings[page].items)
      look_at(inspection, item, edges, matters);
  }
  for (auto &[id, matter] : matters)
    tell(inspection, matter, problems);
}

void check_fills(const Inspection &inspection, Problems &problems) {
  std::map<ElementId, std::pair<const Item *, std::vector<int>>> fills;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items) {
      if (!fills_page(inspection, item) || dressing(inspection, item) ||
          live_area(inspection.edition, inspection.imposition, page).may_fill_page())
        continue;
      auto &[first, pages] = fills[item.element];
      first = first == nullptr ? &item : first;
      pages.push_back(page);
    }
  for (const auto &[element, found] : fills)
    problems.push_back(cannot_fill_page(inspection, *found.first, found.second));
}

} // namespace bodkin
