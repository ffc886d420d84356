// Letters drawn by strokes, for what the compiler itself writes on proofs and in marks: always
// there, in no face of the edition's. Capitals, digits and common signs; other characters come as a
// small box.
#pragma once

#include <cairo.h>
#include <string_view>

namespace bodkin::press {

// `height` of a capital, in the context's unit; x, y the baseline's start. In the current colour.
void draw_letters(cairo_t *cairo, std::string_view text, double x, double y, double height);
double letters_width(std::string_view text, double height);

} // namespace bodkin::press
