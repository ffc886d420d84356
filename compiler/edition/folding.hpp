// How a sheet is folded into pages, as its shelf file tells it; the room sheet/ does the folding.
#pragma once

#include "edition/known.hpp"
#include "measure/box.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

enum class Part { left, right, top, bottom };

constexpr Part opposite(Part part) {
  switch (part) {
  case Part::left:
    return Part::right;
  case Part::right:
    return Part::left;
  case Part::top:
    return Part::bottom;
  case Part::bottom:
    break;
  }
  return Part::top;
}

constexpr bool sideways(Part part) { return part == Part::left || part == Part::right; }

enum class FoldKind { over_a_line, back_and_forth, ends_together };

// `fold right over left`: the named half is lifted and laid over the other; `under` lays it
// beneath. `, 1 panel` lifts that much instead of a half.
struct FoldStep {
  Part moving = Part::right;
  bool under = false;
  Range range{};
  FoldKind kind = FoldKind::over_a_line;
  int panels = 0; // over a line: that many; 0: a half
  int layers = 0; // over a line: so many from the side that it comes to lie on; 0: all
  int from = 1;   // back and forth: the panel of the strip that the others are laid under
};

// A cut in the flat sheet along the line after a row (or a column) of panels, from one panel of it
// to another; counted from 1.
struct Slit {
  bool between_rows = true;
  int after = 1;
  int first = 1, last = 0; // 0: to the end
  int steps_before = 0;    // folds written above it
  Range range;
};

// A strip at the sheet's right edge or its bottom that the next sheet is glued on.
struct Tab {
  Part at = Part::right;
  Length width;
  Range range;
};

// Places of sewing holes on a copy bound at its side, as stab sewing has them.
struct Holes {
  int count = 0;
  Length from_spine, from_head_and_foot;
  Range range;
};

// A row or column that is this much less wide than its share.
struct Narrowed {
  bool column = true;
  int number = 1;
  Length by;
  Range range;
};

enum class Gather { nested, one_after_another };
// The leaves turn about a spine, or the folds are opened one by one.
enum class OpenedBy { leaves, folds };

struct Folding {
  std::string name, title;
  Range range;
  std::optional<Known<Size>> sheet; // none: any size
  bool across = true;               // the sheet lies with its long edge across while it is folded
  std::optional<Known<int>> sheets; // none: any number
  int columns = 1, rows = 1;        // panels of the sheet
  std::vector<FoldStep> steps;
  Known<Gather> gather;

  Range panels_range;
  std::vector<int> widths, heights; // shares of the panels; empty: all alike
  Range widths_range, heights_range;
  std::vector<Narrowed> narrowed;
  std::vector<Slit> slits;
  std::optional<Tab> tab;
  bool one_side = false; // pages stand on one side alone; the other is one area
  Range sides_range;
  std::optional<Known<Part>> spine;      // of the folded sheet; none: the last fold's crease
  std::optional<Known<OpenedBy>> opened; // none: as the folds have it
  std::optional<Holes> holes;
  std::optional<Range> pasted; // the two ends of a strip, back to back
  int sheets_a_section = 0;    // nested: 0 all in one section
  bool back_to_back = false;   // two sections, the second turned over behind the first
  bool round = false;          // sheets bend round each other instead of being creased sharply
  // Pages of the two sides, row by row as seen, where folding alone cannot say.
  Known<std::vector<int>> front, back;
};

} // namespace bodkin
