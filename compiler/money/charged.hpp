// What a printing shop counts: every side of every sheet of one copy, with the machine that it goes
// through and the mode that it is charged by. The whole run's counts follow from these.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

#include <functional>
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
};

using ChargedSides = std::vector<ChargedSide>;

// An edition laid on its sheets, as far as money asks.
struct Laid {
  Imposition imposition;
  ChargedSides sides;
};

// Lays a changed edition anew: how a way to save money is tried in earnest.
using LayAnew = std::function<Laid(const Edition &)>;

} // namespace bodkin
