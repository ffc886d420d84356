// Problems of matter at the edges of its page, told once for each thing, however many pages it
// stands on.
#pragma once

#include "preflight/reach.hpp"

#include <vector>

namespace bodkin {

// The worst comes last.
enum class EdgeTrouble { none, near_the_knife, unsafe, off_the_page };

// One page on which a thing is in trouble: how far it passes what the trouble is about, in the
// page's own frame.
struct Fault {
  int page = 0;
  EdgeTrouble trouble = EdgeTrouble::none;
  Past past{};
};

// A thing on all the pages that carry it. A place that is counted from `outer` or `inner` is
// mirrored from page to page, so what is said of it is said of its outer edge, not of its left one.
struct Matter {
  const Item *item = nullptr;
  bool mirrored = false;
  // Past the area that would be safe and readable, the farthest of all pages: left (or outer), top,
  // right (or inner), foot; below 0 is room to move into.
  Past reach{};
  // Of words, how far their whole place passes it, filled or not.
  Past place_reach{};
  std::vector<Fault> faults;
};

bool outer_is_left(const Inspection &inspection, int page);

Problem off_the_page(const Inspection &inspection, const Matter &matter);
Problem unsafe_matter(const Inspection &inspection, const Matter &matter); // art or words
Problem near_the_knife(const Inspection &inspection, const Matter &matter);
Problem cannot_fill_page(const Inspection &inspection, const Item &item,
                         const std::vector<int> &pages);

} // namespace bodkin
