#pragma once

#include <filesystem>

#include "lamp/light.hpp"

enum class Toning { grey, colour };

// Prints the film as a JPEG at 300 samples an inch: a soft shoulder for the highlights, then the
// sRGB curve (IEC 61966-2-1). Grey is the luminance of linear light (ITU-R BT.709 weights).
// Throws std::runtime_error if the file cannot be written.
void print(const Film &film, Toning toning, double exposure, const std::filesystem::path &file);
