// What is glued on pages: leaves tipped in, pockets, boards. Where each lies on its page, and what
// of the page it hides for good.
#pragma once

#include "sheet/parts.hpp"

namespace bodkin {

// Parts are those of the vector asked.
struct GluedOn {
  const CopyPart *piece = nullptr, *host = nullptr;
  int page = 0; // of the host
  Box box;      // on that page, as folded, before the knife
  Box hides;    // the whole of a pocket or a board; of a leaf that lifts, its strip of glue
};

std::vector<GluedOn> glued_on(const std::vector<CopyPart> &parts);

} // namespace bodkin
