// What a printing shop counts: every side of every sheet of one copy, with the machine that it goes
// through and the mode that it is charged by. The whole run's counts follow from these.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"
#include "sheet/passes.hpp"

#include <span>
#include <vector>

namespace bodkin {

struct ChargedSide {
  int sheet = 0; // index into Imposition::sheets
  int side = 0;  // 0 front, 1 back
  MachineId machine = MachineId::none;
  bool printed = false;    // something is drawn on it
  Mode mode = Mode::black; // the dearest on it, where it is printed
  // The pass that prints the sheet's other side feeds this one too: with `blank charged` the
  // machine counts it although nothing prints on it.
  bool fed_both = false;
  int pass = 0; // that feeds it
};

using ChargedSides = std::vector<ChargedSide>;

// Every side that is printed, and every empty one that is fed through with its printed other side.
ChargedSides charged_sides(const Imposition &imposition, std::span<const SheetModes> modes,
                           std::span<const Pass> passes);

// An edition laid on its sheets, as far as money asks.
struct Laid {
  Imposition imposition;
  ChargedSides sides;
};

// Folds and counts an edition anew, its pieces too; each page that draws asks for its own mode.
// `draws` is by page, numbered on through book and pieces from 1. Problems of the sheets are not
// said again here.
Laid lay(const Edition &edition, const std::vector<bool> &draws, const Sources &sources);

} // namespace bodkin
