// Passes: each is one run of one stock through one machine, and one PDF. Sides are charged by the
// dearest mode on them; a side whose pages draw nothing is blank and is not printed.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace bodkin {

// What a page asks of its side, by page, index 1..page_count (0 is unused).
struct PageInk {
  bool draws = false;
  Mode mode = Mode::black;
};

using SideMode = std::optional<Mode>;       // none: blank
using SheetModes = std::array<SideMode, 2>; // front, back
std::vector<SheetModes> modes_of(const Imposition &imposition, std::span<const PageInk> pages);

enum class PassSides { both, fronts, backs };

struct PassPage {
  int sheet = 0; // index into Imposition::sheets
  SideName side = SideName::front;
  bool prints = true;   // false: an empty PDF page, so that the machine turns the sheet
  bool turned = false;  // half a turn from how sheets.pdf shows it, for the machine's flip
  std::int64_t nth = 0; // of a numbered pass: which of these sheets, from 0
};

struct Pass {
  int number = 0;   // from 1
  std::string file; // "passes/01-board.pdf"
  StockId stock = StockId::none;
  MachineId machine = MachineId::none;
  Mode mode = Mode::black;           // the dearest in it
  PassSides sides = PassSides::both; // both: two PDF pages for each sheet, front then back
  // Each sheet of the run has pages of its own, since they show the copy's number: printed once.
  bool numbered = false;
  RunSet only;                      // whose copies it is for
  std::vector<int> sheets;          // indices; none that it does not print
  std::vector<PassPage> pages;      // of its PDF
  std::vector<std::string> feeding; // whole sentences: how paper goes in, and back in
};

// In order of number. Problem: one-side-only.
std::vector<Pass> passes_of(const Edition &edition, const Imposition &imposition,
                            std::span<const SheetModes> modes, const Sources &sources,
                            Problems &problems);

} // namespace bodkin
