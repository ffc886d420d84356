// A family of the machine by its exact name, and names near it.
#pragma once

#include "edition/face.hpp"
#include "type/system_faces.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// By cut; null where the family has none. A family of one weight alone gives it as its regular.
// Regular is the upright nearest to weight 400, bold the one nearest to 700 and at least 600, both
// of normal width where there is such a one; of equals the first by path.
std::array<const SystemFace *, 4> cuts_of_family(const std::vector<SystemFace> &faces,
                                                 std::string_view family);

// Up to three family names that a maker may have meant, the nearest first: few letters apart, or
// one within the other.
std::vector<std::string> near_families(const std::vector<SystemFace> &faces,
                                       std::string_view family);

} // namespace bodkin
