// How far an item's ink reaches past a frame, edge by edge.
#pragma once

#include "page/outline.hpp"
#include "preflight/preflight.hpp"
#include "sheet/live.hpp"

#include <array>
#include <optional>

namespace bodkin {

// Past each edge of a box, in the order left, top, right, bottom; below 0 where it stays inside.
using Past = std::array<Length, 4>;
// Less than this is a rounding of points, not a fact of paper: 0.01 pt. Touching is not passing.
inline constexpr Length least_past = Length::units(Length::per_point / 100);

Past past(const Extent &extent, const Box &box);
bool any(const Past &past); // passes an edge
std::size_t worst(const Past &past);
Past largest(const Past &a, const Past &b);
// Left and right exchanged.
Past mirrored(const Past &past);

// The ink of an item on its page. A picture whose window is not safe is asked for its own ink:
// near-white borders are paper.
std::optional<Extent> ink_extent(const Inspection &inspection, const Item &item, const Box &safe);

} // namespace bodkin
