// The live area of a page, edge by edge: what is surely printed and not cut. Each edge asks the
// larger of what the machine leaves bare there and what the knife takes; an uncut fold asks
// nothing. The parts are kept, so that a problem can say where the figure comes from.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

#include <array>

namespace bodkin {

struct Trims {
  Length fore_edge, head, foot; // 0: not cut
};
Trims trims_written(const Edition &edition); // of its `finish`; cuts at one edge add up
// The same, but for cuts that would leave nothing of a page: these are told and not counted.
Trims trims_of(const Edition &edition);

enum class PageEdge { left, top, right, bottom };

// All in the page's own upright frame.
struct EdgeAsk {
  Meets meets = Meets::sheet_edge;
  bool fore_edge = false; // the edge opposite the spine
  bool back = false;      // the page is on a back, where drift counts
  Length bare;            // that the machine leaves at this edge of the sheet; 0 at a fold
  Length slack;           // paper between the page and the sheet's edge
  Length shift;           // matter moved away from this edge
  Length trim;            // that the knife takes; 0: not cut
  Length creep;           // not made up for
  Length drift;           // of the machine, on a back, where the edge is cut
  Length hidden;          // paper that no reader sees: held in the binding, or under a glued tab

  Length for_bare() const;  // bare - slack - shift, at least 0
  Length for_knife() const; // trim + creep + drift where cut, else 0
  Length asks() const;      // the largest of these and of what is hidden
};

struct LiveArea {
  std::array<EdgeAsk, 4> edges; // by PageEdge
  const EdgeAsk &operator[](PageEdge edge) const { return edges[static_cast<std::size_t>(edge)]; }
  Edges asks() const;
  Box box(const Size &page) const { return inside(page, asks()); }
  // Matter may run to the page's edge: each edge that meets the sheet's edge is cut off by at least
  // the bare edge. (The edge at fault: `[edge].trim < [edge].bare`.)
  bool may_fill_page() const;
};

// `machine` is the side's. A wider lead strip counts at both short edges of the sheet: nothing
// tells which of the two goes in first, and turning the sheet over may change it.
LiveArea live_area(const Imposition &imposition, int page, const Machine &machine,
                   const Trims &trims);
// By the machine of the page's side and the edition's `finish`.
LiveArea live_area(const Edition &edition, const Imposition &imposition, int page);

} // namespace bodkin
