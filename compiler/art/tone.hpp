// What is done to a picture's tones before it is placed.
#pragma once

#include "art/pixels.hpp"
#include "edition/element.hpp"

namespace bodkin::art {

// Luminance, in the sRGB curve: linear light by IEC 61966-2-1, weights 0.2126, 0.7152, 0.0722 of
// ITU-R BT.709. Alpha stays. Equal channels stay what they are.
Pixels grey(Pixels pixels);
// One row of three or four channels; `to` has two channels less, and may be where `from` is.
void grey_row(const std::uint8_t *from, int width, int channels, std::uint8_t *to);

// Ink where the grey, over white paper, is darker than the threshold's share of 255.
Bits line_art(Pixels pixels, Share threshold);

// Alpha laid on white paper, mixed in encoded values as a printer's software does; one or three
// channels are left.
Pixels on_white(Pixels pixels);

// The part of a picture that a crop keeps.
Pixels cropped(Pixels pixels, const std::optional<Crop> &crop);

} // namespace bodkin::art
