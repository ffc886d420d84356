#include "sheet/creep.hpp"

namespace bodkin {

std::vector<Length> creep_of(const std::vector<Length> &calipers) {
  std::vector<Length> creep;
  creep.reserve(calipers.size());
  Length doubled; // summed before halving, so that no half unit is lost
  for (std::size_t i = 0; i < calipers.size(); ++i) {
    if (i > 0)
      doubled += calipers[i - 1] + calipers[i];
    creep.push_back(doubled / 2);
  }
  return creep;
}

} // namespace bodkin
