// What is done to each copy after printing, in order, with the places worked out in measures from
// its head and with the care that blades, needles and glue ask.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

#include <string>
#include <vector>

namespace bodkin {

struct FinishTold {
  std::string says;               // "staple: 2, leg 1/4in, at 2 1/8in and 6 3/8in from the head"
  std::vector<Length> down;       // of staples and holes, from the head of the copy as it is then
  std::vector<std::string> facts; // what the ruler will find, whole sentences
  std::vector<std::string> cautions; // the maker's own, then the usual one
};

std::vector<FinishTold> finish_told(const Edition &edition, const Imposition &imposition);
// For a terminal; empty where the edition says no finish.
std::string finish_in_words(const Edition &edition, const Imposition &imposition);

} // namespace bodkin
