// The compiler's own small letters set in a box: notes on proofs, and words in the windows of
// originals.
#pragma once

#include "press/strokes.hpp"

#include <string_view>

namespace bodkin::press {

// Broken to a width between blanks, at most as many lines as the height takes.
void words_in(Strokes &drawn, std::string_view text, double width, double height);
// The same; beside a place that is too narrow for its longest word.
void note(Strokes &drawn, std::string_view text, double width, double height);

} // namespace bodkin::press
