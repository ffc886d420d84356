// What a side of a sheet, or a page, shows, placed from layers.
#pragma once

#include "press/contents.hpp"
#include "press/plates.hpp"

#include <functional>

namespace bodkin::press {

using LayersOf = std::function<const std::vector<Layer> &(int page)>;

// In the sheet's PDF space, marks with it.
void draw_side(Contents &contents, const PrintJob &job, const LayersOf &layers_of, int sheet,
               int side);
// In the page's own frame.
void draw_layers(Contents &contents, const std::vector<Layer> &layers);

} // namespace bodkin::press
