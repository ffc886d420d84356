#include "sheet/bare.hpp"

#include <algorithm>

namespace bodkin {

Edges bare_edges(const Machine &machine, const Size &sheet) {
  const Length bare = *machine.bare;
  const Length lead = machine.lead ? std::max(bare, **machine.lead) : bare;
  const bool short_edges_upright = sheet.width >= sheet.height;
  return short_edges_upright ? Edges{lead, bare, lead, bare} : Edges{bare, lead, bare, lead};
}

} // namespace bodkin
