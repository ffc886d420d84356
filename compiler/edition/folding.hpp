// How a sheet is folded into leaves, as its shelf file tells it; the room sheet/ does the folding.
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

// `fold right over left`: the named half is lifted and laid over the other; `under` lays it
// beneath.
struct FoldStep {
  Part moving = Part::right;
  bool under = false;
  Range range;
};

enum class Gather { nested, one_after_another };

struct Folding {
  std::string name, title;
  Range range;
  std::optional<Known<Size>> sheet; // none: any size
  bool across = true;               // the sheet lies with its long edge across while it is folded
  std::optional<Known<int>> sheets; // none: any number
  int columns = 1, rows = 1;        // panels of the sheet
  std::vector<FoldStep> steps;
  Known<Gather> gather;
};

} // namespace bodkin
