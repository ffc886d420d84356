// The checks that need the whole: pages on their sheets, what is drawn on them, the machine, the
// paper and the knife. One file for each family of checks; none of them draws or reads a terminal.
#pragma once

#include "art/gallery.hpp"
#include "edition/edition.hpp"
#include "page/drawing.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"
#include "sheet/passes.hpp"

#include <span>

namespace bodkin {

struct Inspection {
  const Edition &edition;
  const Imposition &imposition;
  const Drawings &drawings;
  std::span<const SheetModes> modes; // of each sheet's sides, index as Imposition::sheets
  art::Gallery &gallery;
  const Sources &sources;
};

void preflight(const Inspection &inspection, Problems &problems);

} // namespace bodkin
