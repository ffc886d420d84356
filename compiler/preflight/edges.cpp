#include "preflight/about.hpp"
#include "preflight/edge_problems.hpp"
#include "preflight/families.hpp"
#include "preflight/reach.hpp"

namespace bodkin {
namespace {

bool crosses(const Item &item) { return item.crosses_fold; }

// On a spread the fold is no edge for what crosses it.
Box safe_box(const Inspection &inspection, int page, const LiveArea &live, const Item &item) {
  Box safe = live.box(inspection.imposition.page_size);
  if (!crosses(item))
    return safe;
  const Length width = inspection.imposition.page_size.width;
  return page % 2 == 0 ? Box{safe.x, safe.y, width * 3, safe.height}
                       : Box{-width * 2, safe.y, width * 2 + safe.right(), safe.height};
}

Box page_box(const Inspection &inspection, int page, const Item &item) {
  const Size &size = inspection.imposition.page_size;
  if (!crosses(item))
    return {{}, {}, size.width, size.height};
  return page % 2 == 0 ? Box{{}, {}, size.width * 3, size.height}
                       : Box{-size.width * 2, {}, size.width * 3, size.height};
}

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

void check_item(const Inspection &inspection, int page, const Item &item, Problems &problems) {
  if (!leaves_ink(item) || std::holds_alternative<SetMissing>(item.what) ||
      fills_page(inspection, item) || dressing(inspection, item))
    return;
  const LiveArea live = live_area(inspection.edition, inspection.imposition, page);
  const Box safe = safe_box(inspection, page, live, item);
  const auto extent = ink_extent(inspection, item, safe);
  if (!extent)
    return;
  const Past off = past(*extent, page_box(inspection, page, item));
  if (any(off)) {
    problems.push_back(off_the_page(inspection, page, item, off));
    return;
  }
  const Past unsafe = past(*extent, safe);
  if (any(unsafe)) {
    problems.push_back(unsafe_matter(inspection, page, item, live, unsafe));
    return;
  }
  if (is_words(item))
    if (auto problem = near_the_knife(inspection, page, item, live, *extent))
      problems.push_back(std::move(*problem));
}

} // namespace

void check_edges(const Inspection &inspection, Problems &problems) {
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items)
      check_item(inspection, page, item, problems);
}

void check_fills(const Inspection &inspection, Problems &problems) {
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items) {
      if (!fills_page(inspection, item) || dressing(inspection, item))
        continue;
      const LiveArea live = live_area(inspection.edition, inspection.imposition, page);
      if (!live.may_fill_page())
        problems.push_back(cannot_fill_page(inspection, page, item, live));
    }
}

} // namespace bodkin
