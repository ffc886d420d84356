// What `bodkin sheets` prints: where every page lands, as text to follow with paper in hand, and as
// JSON (lengths in points, 1/72 in; pages from 1).
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"
#include "sheet/passes.hpp"

#include <span>
#include <string>

namespace bodkin {

struct SheetsReport {
  const Edition &edition;
  const Imposition &imposition;
  std::span<const SheetModes> modes;
  std::span<const Pass> passes;
};

std::string sheets_as_text(const SheetsReport &report);
std::string sheets_as_json(const SheetsReport &report);

} // namespace bodkin
