// What a dummy is measured by: flights of lines at the sheet's edges, and scales that meet through
// the paper. All on a drawing of the side as seen, points, y down.
#pragma once

#include "measure/box.hpp"
#include "press/strokes.hpp"
#include "sheet/imposition.hpp"

namespace bodkin::press {

// The lines of a scale: how far apart, how often one is named, and what the names count in.
struct Graduation {
  Length step;
  int named_every = 5;
  int names_count_by = 5; // from one name to the next
  std::string_view unit;
};
// Hundredths of an inch, or quarters of a millimetre named by the millimetre.
Graduation graduation(Ruler ruler);

// At each edge, from the edge inwards: line n stands n steps in, each a little further along, so
// that the first line seen whole tells how wide an edge was left bare.
void draw_rulers(Strokes &drawn, const Size &sheet, const Graduation &lines);

// Across and down, right of and below the sheet's middle: the front's steps on one side of a line,
// the back's on the other as the light shows them.
void draw_crossed_scales(Strokes &drawn, const Sheet &sheet, SideName side,
                         const Graduation &lines);

} // namespace bodkin::press
