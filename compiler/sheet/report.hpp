// What `bodkin sheets` prints: where every page lands, as text to follow with paper in hand, as
// JSON (lengths in points, 1/72 in; pages from 1), and as a drawing.
#pragma once

#include "edition/edition.hpp"
#include "sheet/figure.hpp"
#include "sheet/imposition.hpp"
#include "sheet/parts.hpp"
#include "sheet/passes.hpp"

#include <span>
#include <string>

namespace bodkin {

struct SheetsReport {
  const Edition &edition;
  const Imposition &imposition;
  std::span<const SheetModes> modes;
  std::span<const Pass> passes;
  std::span<const CopyPart> parts{}; // of a copy; may be left out where it is a book alone
};

std::string sheets_as_text(const SheetsReport &report);
std::string sheets_as_json(const SheetsReport &report);
// Every sheet, both sides, and the stages of folding one; where the folding cannot be done, the
// stages up to there with the panels at fault.
std::vector<Figure> draw_sheets(const SheetsReport &report);
// These drawings one below the other.
std::string sheets_as_svg(const SheetsReport &report);

} // namespace bodkin
