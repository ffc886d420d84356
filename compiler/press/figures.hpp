// Drawings of sheets and foldings as a PDF, figure under figure on as many pages as they need.
#pragma once

#include "press/output.hpp"
#include "sheet/figure.hpp"

#include <span>

namespace bodkin::press {

// A figure higher than `paper` is drawn smaller; every page tells its number.
void write_figures(std::span<const Figure> figures, const Size &paper, const Imprint &imprint,
                   const Sink &sink);

} // namespace bodkin::press
