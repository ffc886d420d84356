// Letters drawn by strokes, for what the compiler itself writes on proofs and in marks: always
// there, in no face of the edition's. Capitals, digits and common signs; other characters come as a
// small box.
#pragma once

#include <functional>
#include <string_view>

namespace bodkin::press {

// The way of the pen along a text: to a point with the pen down or lifted. `height` of a capital;
// x, y the baseline's start, y down.
using PenStep = std::function<void(double x, double y, bool down)>;
void trace_letters(std::string_view text, double x, double y, double height, const PenStep &step);
// How thick the pen is; its ends are round.
double letters_pen(double height);
double letters_width(std::string_view text, double height);

} // namespace bodkin::press
