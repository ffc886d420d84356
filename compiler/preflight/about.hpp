// What several checks say alike.
#pragma once

#include "preflight/preflight.hpp"

#include <string>

namespace bodkin {

// The line that speaks of an item: its own place, or the `lay` that brought it.
const Element &element_of(const Inspection &inspection, const Item &item);
Range place_range(const Inspection &inspection, const Item &item);
// "picture", "words", … of what is seen.
std::string name_of(const Inspection &inspection, const Item &item);

// "page 4 is on the back of sheet 2, on its left" in words of the sheet.
std::string where_on_sheet(const Inspection &inspection, int page);

std::string length(const Inspection &inspection, Length length);
// Rounded away from nothing to a length that a ruler shows: 1/16in, or half a millimetre.
Length ruled(const Inspection &inspection, Length length);
// "at       1/4in 1/2in, 4.5in x 3in"
std::string at_line(const Inspection &inspection, const Box &box);

bool is_words(const Item &item); // words, folios and codes: what must be read

} // namespace bodkin
