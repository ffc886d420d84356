// What originals say to hands and not to copies, in a pale blue that the machine does not see: the
// windows of what is glued on, the edges and names of pages and sheets.
#pragma once

#include "press/plates.hpp"
#include "press/strokes.hpp"

#include <string>
#include <vector>

namespace bodkin::press {

// Something is glued on one of its pages.
bool has_originals(const PrintJob &job);
bool has_window(const PrintJob &job, int page);

// A page's original stands so far from each edge of its own sheet of paper.
inline constexpr double original_margin = 36;

// `number` of `of` originals in all. One page by itself, in the middle of its paper.
Strokes blue_of_page(const PrintJob &job, int page, int number, int of);
// One side as it is laid on the glass: half a turn from how sheets.pdf shows it, or as there.
Strokes blue_of_side(const PrintJob &job, const PassPage &side, int number, int of);

// Sides as they come on the glass: by pass, each side once.
std::vector<PassPage> sides_for_the_glass(const PrintJob &job);

} // namespace bodkin::press
