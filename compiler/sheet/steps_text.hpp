// A folding told to a person with the sheet in hand.
#pragma once

#include "edition/edition.hpp"
#include "sheet/fold.hpp"
#include "sheet/imposition.hpp"

#include <string>

namespace bodkin {

// "left over right", "left over right by 1 panel", "back and forth".
std::string step_in_words(const FoldStep &step);
// Whole sentences, one a line.
std::string folding_in_words(const Edition &edition, const FoldedSheet &folded,
                             const Imposition &imposition);

} // namespace bodkin
