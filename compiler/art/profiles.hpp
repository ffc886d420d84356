// The ICC profile that each kind of raster file carries; empty where it has none.
#pragma once

#include "art/inspect.hpp"

#include <string>
#include <string_view>

namespace bodkin::art {

std::string png_profile(std::string_view bytes);
std::string jpeg_profile(std::string_view bytes, const JpegHead &head);
std::string tiff_profile(std::string_view bytes);
std::string webp_profile(std::string_view bytes);
std::string heic_profile(std::string_view bytes);

} // namespace bodkin::art
