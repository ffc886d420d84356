// The marks of one side of a sheet, drawn.
#pragma once

#include "press/plates.hpp"
#include "press/strokes.hpp"

#include <optional>

namespace bodkin::press {

// In the frame of the sheet; nothing where the side has no marks.
std::optional<Strokes> draw_marks(const PrintJob &job, int sheet, int side);

} // namespace bodkin::press
