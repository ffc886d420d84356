// From a place as written to an upright box on the page.
#pragma once

#include "edition/edition.hpp"
#include "sheet/live.hpp"

#include <optional>

namespace bodkin {

// The ground that things are placed on: one page, or the two of a spread as one.
struct Ground {
  Size size;
  Box live, margins;
  bool left_page = false;         // `outer` is at the left
  std::vector<BandPart> panels{}; // of a band
};
Ground ground_of(const Edition &edition, const Imposition &imposition, int page);
// Both pages as one area, counted from the left one.
Ground ground_of(const Edition &edition, const Imposition &imposition, const Spread &spread);

Box area_of(const Ground &ground, Area area); // Area::place: the margins
Box box_of(const At &at, Size size, const Ground &ground);
Box box_of(const Cells &cells, const Edition &edition, const Ground &ground);
// Where an element is to stand: its own place, or the area that it fills or fits, or the margins.
Box place_of(const Placement &placement, const Edition &edition, const Ground &ground);

// The edge that words in a place anchored to `outer` or `inner` are ranged to; none for other
// places.
enum class RangedTo { own, left, right };
RangedTo ranged_by(const Placement &placement, const Ground &ground);

} // namespace bodkin
