// Numbers as PDF content writes them.
#pragma once

#include "page/transform.hpp"

#include <string>

namespace bodkin::press {

// At most five decimals, none that say nothing; never an exponent.
void append_number(std::string &out, double value);
// "a b c d e f cm\n"
void append_matrix(std::string &out, const Transform &map);
// A closed path through the corners, then "W n": what follows is clipped to it.
void append_clip(std::string &out, const Polygon &corners);

} // namespace bodkin::press
