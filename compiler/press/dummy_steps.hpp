// Steps that show what a machine can print: greys, screens, lines, and blues that it should not
// see. Each is a block that is drawn from its top left, as wide as it is given.
#pragma once

#include "press/strokes.hpp"

#include <span>

namespace bodkin::press {

struct StepBlock {
  double height = 0;
  void (*draw)(Strokes &drawn, double width) = nullptr;
};

// In the order in which they are laid.
std::span<const StepBlock> step_blocks();

// The blues, the strongest first; `bodkin dummy` names them for a machine's `blue`.
std::span<const Colour> blues_to_try();

} // namespace bodkin::press
