// What each kind of raster file says in its head. Each takes bytes that begin as its kind does.
#pragma once

#include "art/inspect.hpp"

#include <string_view>

namespace bodkin::art {

Outcome<Facts> png_head(std::string_view bytes, const Bounds &bounds);
Outcome<Facts> jpeg_head(std::string_view bytes, const Bounds &bounds);
Outcome<Facts> tiff_head(std::string_view bytes, const Bounds &bounds);
Outcome<Facts> webp_head(std::string_view bytes, const Bounds &bounds);
Outcome<Facts> heic_head(std::string_view bytes, const Bounds &bounds);

} // namespace bodkin::art
