// Photographs placed with their data untouched: no decoding, no loss.
//
// Facts::jpeg (art/inspect.hpp) lists the bytes to keep: all but the application markers and
// comments in which cameras and phones write place, time, owner, maker and thumbnails, and all that
// follows the end of the image. Kept are JFIF (without thumbnail), the ICC profile and Adobe's
// APP14, which decoding needs. Facts::orientation says how the untouched data are to be turned by a
// matrix.
#pragma once

#include "art/inspect.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin::art {

// What stands in the PDF beside the data.
struct PlacedJpeg {
  std::vector<std::string_view> pieces; // into the file's bytes, in order
  std::size_t bytes = 0;                // their sum
  std::int64_t width = 0, height = 0;   // of the data, as stored
  int components = 3;                   // 1 DeviceGray, 3 DeviceRGB, 4 DeviceCMYK
  bool inverted = false;                // needs /Decode [1 0 1 0 1 0 1 0]
};

// False where the data must be decoded after all: not a JPEG, or one that PDF readers do not take.
bool can_be_placed(const Facts &facts);
// For facts that can_be_placed; borrows from `bytes`.
PlacedJpeg placed_jpeg(std::string_view bytes, const Facts &facts);

// The first component alone, coefficients untouched, as a grey JPEG without any of the markers
// above. For YCbCr data; its grey is the JPEG's own luma (BT.601 weights on encoded values, ITU-T
// T.871), which differs from the luminance of art/tone.hpp where colours are strong.
Outcome<std::string> grey_jpeg(std::string_view bytes, const Facts &facts);

// Grey or RGB samples without alpha as a JPEG at a quality of 1 to 100, colour not subsampled.
std::string to_jpeg(const Pixels &pixels, int quality);

} // namespace bodkin::art
