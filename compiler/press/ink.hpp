// Drawing the vector things of a page on a Cairo context whose unit is the point, y down from the
// page's top left.
#pragma once

#include "page/drawing.hpp"
#include "press/fonts.hpp"

namespace bodkin::press {

// Words, fills, outlines, rules and codes; pictures are placed by others.
void draw(cairo_t *cairo, const Item &item, Fonts &fonts);

// As a share of a colour: the rest is paper, which is white here.
Colour tinted(Paint paint, Share share);
void set_paint(cairo_t *cairo, Colour colour);

} // namespace bodkin::press
