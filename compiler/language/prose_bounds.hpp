// Text as it may go to libcmark, whose work and memory grow with the depth of lists and quotes and,
// where signs pile up in one paragraph, with the square of their number (release 0.30.2).
#pragma once

#include <cstddef>

#include <string>
#include <string_view>

namespace bodkin::language {

struct BoundedProse {
  std::string text;                            // with its line count kept
  std::size_t deep_line = 0, tangled_line = 0; // the first such line, from 1; 0: none
};

// Signs of lists and quotes deeper than limits::prose_nesting become blanks; a paragraph with too
// many signs is emptied of them.
BoundedProse bounded(std::string_view text);

} // namespace bodkin::language
