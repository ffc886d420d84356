// What only proofs show: hand work, and keylines where a thing cannot be drawn.
#pragma once

#include "page/drawing.hpp"
#include "press/owners.hpp"

namespace bodkin::press {

void draw_on_proof(cairo_t *cairo, const Item &item);

} // namespace bodkin::press
