// The line of a manuscript that a problem is about, with the exact words underlined, as a terminal
// shows them.
#pragma once

#include "problems/sources.hpp"

#include <string>

namespace bodkin {

struct Excerpt {
  std::string line;      // without its indentation, unless that is what the range is about
  std::string underline; // spaces, then at least one ~ under the range's first column
};

// Tabs are opened to every eighth column of the manuscript's line. Of a line too long for `columns`
// the part around the range is kept, with … where it was cut. A range over several lines is
// underlined to its first line's end. Time and memory do not grow with the line.
Excerpt excerpt_of(Range range, const Sources &sources, int columns);

} // namespace bodkin
