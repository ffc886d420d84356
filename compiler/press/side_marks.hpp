// The marks of one side of a sheet, drawn.
#pragma once

#include "press/plates.hpp"
#include "press/vectors.hpp"

namespace bodkin::press {

// The number of the layer, as large as the sheet; -1 where the side has no marks.
int draw_marks(const PrintJob &job, int sheet, int side, Vectors &vectors);

} // namespace bodkin::press
