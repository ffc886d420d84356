// The one fact of an EXIF block that a picture needs: how it is to be turned (EXIF 2.32, 4.6.2 and
// tag 274). Nothing else in it is read, nothing of it is kept.
#pragma once

#include "art/orientation.hpp"

#include <string_view>

namespace bodkin::art {

// `block` begins with a TIFF header, with or without "Exif\0\0" before it. Upright where the block
// is damaged or says nothing.
Orientation exif_orientation(std::string_view block);

} // namespace bodkin::art
