// The paper of a side that the machine prints and the knife takes: the only paper that marks may
// stand on.
#pragma once

#include "sheet/imposition.hpp"
#include "sheet/live.hpp"

#include <vector>

namespace bodkin {

struct Strip {
  Box box;                 // on the side as seen
  int place = 0;           // index into the side's places
  bool lies_across = true; // along a place's upper or lower edge on the sheet; else along a side
  bool edge_first = true;  // the place's outer edge is at the strip's left or top, the knife beyond
  bool fore_edge = false;
  Length knife; // where the knife goes: a y of a strip that lies across, else an x
};

// Inner sheets stand out past the outer ones by their creep, so the fore-edge loses that much more
// of their paper. `clearance` is kept between a strip and the knife.
std::vector<Strip> strips_cut_off(const Sheet &sheet, const Side &side, const Trims &trims,
                                  const Edges &bare, Length clearance);

} // namespace bodkin
