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
#include <string_view>
#include <vector>

namespace bodkin {

struct Inspection {
  const Edition &edition;
  const Imposition &imposition;
  const Drawings &drawings;
  std::span<const SheetModes> modes; // of each sheet's sides, index as Imposition::sheets
  art::Gallery &gallery;
  const Sources &sources;
  std::string_view piece{}; // whose pages these are by their own numbers; empty: the book's
  int sheets_before = 0;    // sheets of the copy are numbered on through its parts
  // Of another run's book: the number that each of its sheets has in the copy.
  std::vector<int> numbers{};
  bool is_other_book() const { return !numbers.empty(); }
};

void preflight(const Inspection &inspection, Problems &problems);

} // namespace bodkin
