// Drawings, tried out under bounds: what they say of themselves, and a small picture of them.
#pragma once

#include "art/inspect.hpp"
#include "art/pixels.hpp"
#include "art/trial.hpp"

#include <cstdint>
#include <string_view>

struct _cairo;

namespace bodkin::art {

struct Sketch {
  DrawingHead head;         // coloured, ink and luminance are not yet filled
  Trial trial;              // the samples lie where the child left them
  PixelView pixels() const; // with alpha, drawn on nothing
};
Outcome<Sketch> sketch(std::string_view bytes, Format format, int page, std::int64_t about,
                       const Bounds &bounds);

// The child's part, one a kind of drawing.
void try_svg(std::string_view bytes, std::int64_t about, const Trial &trial);
void try_pdf(std::string_view bytes, int page, std::int64_t about, const Trial &trial);

// Draws into an image of about so many samples in the shape of the trial's natural size, and leaves
// it in the trial. `draw` draws into the unit square.
void leave_samples(const Trial &trial, std::int64_t about,
                   const std::function<bool(_cairo *)> &draw);

} // namespace bodkin::art
