#include "sheet/creep.hpp"

#include <numbers>

namespace bodkin {

std::vector<Length> creep_of(const std::vector<Length> &calipers, bool round) {
  std::vector<Length> creep;
  creep.reserve(calipers.size());
  Length doubled; // summed before halving, so that no half unit is lost
  for (std::size_t i = 0; i < calipers.size(); ++i) {
    if (i > 0)
      doubled += calipers[i - 1] + calipers[i];
    const Length sharp = doubled / 2;
    creep.push_back(round ? Length::nearest_points(sharp.in_points() * std::numbers::pi / 2)
                          : sharp);
  }
  return creep;
}

Length as_measured(Length creep, Length largest, Length measured) {
  if (largest <= Length{})
    return {};
  if (creep == largest)
    return measured;
  return Length::nearest_points(creep.in_points() * measured.in_points() / largest.in_points());
}

} // namespace bodkin
