// A folding told to a person with the sheet in hand.
#pragma once

#include "edition/edition.hpp"
#include "sheet/fold.hpp"
#include "sheet/imposition.hpp"

#include <optional>
#include <string>

namespace bodkin {

// What one share of a folding's `widths` or `heights` measures on the sheet that is folded; nothing
// where its panels are all alike, and are counted themselves.
struct Shares {
  std::optional<Length> across, down;
  Ruler ruler = Ruler::inches;
};
// Of a sheet that is folded whole; `page_size` of one that is cut out of a larger.
Shares shares_of(const Folding &folding, const Imposition &imposition, Ruler ruler);

// "left over right", "left over right by 1 panel", "back and forth"; panels that are shares by what
// they measure: "right over left, 3 1/2in of it".
std::string step_in_words(const FoldStep &step, const Shares &shares = {});
// "between rows 1 and 2, along columns 2 to 3", as the sheet lies to be folded; empty without
// slits.
std::string slits_in_words(const FoldedSheet &folded);
// How sheets of a strip are glued to one another, as a whole sentence; empty where there is no
// strip.
std::string strip_in_words(const Edition &edition, const FoldedSheet &folded,
                           const Imposition &imposition);

// What is told elsewhere, before the folding.
struct FoldingTold {
  bool slits = false, strip = false;
};
// Whole sentences, one a line.
std::string folding_in_words(const Edition &edition, const FoldedSheet &folded,
                             const Imposition &imposition, const FoldingTold &told = {});

} // namespace bodkin
