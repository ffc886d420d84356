// What a side of a sheet, or a page, shows, placed from layers.
#pragma once

#include "press/contents.hpp"
#include "press/plates.hpp"

#include <functional>

namespace bodkin::press {

using LayersOf = std::function<const std::vector<Layer> &(int page)>;

// In the sheet's PDF space, marks with it. Of sheets with numbers the `nth` of the run, from 0.
void draw_side(Contents &contents, const PrintJob &job, const LayersOf &layers_of, int sheet,
               int side, std::int64_t nth = 0);
// In the page's own frame, as a copy has it; none asked: the first of those that differ.
void draw_layers(Contents &contents, const std::vector<Layer> &layers,
                 std::optional<std::int64_t> copy = {});

} // namespace bodkin::press
