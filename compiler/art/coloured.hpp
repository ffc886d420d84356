// Whether a picture prints in colour: after its tone, more than 1 sample in 10,000 has channels
// over 8 of 255 apart.
#pragma once

#include "art/inspect.hpp"
#include "art/pixels.hpp"
#include "edition/element.hpp"

#include <string_view>

namespace bodkin::art {

// Raster files are judged at full size (means of samples would hide fine colour) within the crop,
// row by row, and only until the answer is sure: a colour photograph costs its first rows, a grey
// one stored in colour its whole decoding. Drawings are judged whole by the small drawing that
// inspect() made. Alpha is laid on white.
Outcome<bool> coloured(std::string_view bytes, const Facts &facts, const Tone &tone,
                       const std::optional<Crop> &crop = {}, const Bounds &bounds = {});
bool coloured(PixelView pixels);

} // namespace bodkin::art
