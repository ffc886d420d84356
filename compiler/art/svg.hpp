// SVG drawings, drawn as vectors into whatever Cairo draws on.
#pragma once

#include "art/bounds.hpp"
#include "art/outcome.hpp"
#include "measure/box.hpp"

#include <memory>
#include <string_view>

struct _cairo;
struct _RsvgHandle;

namespace bodkin::art {

// Opened once, drawn any number of times. Owns its parsed drawing.
class SvgDrawing {
public:
  struct Close {
    void operator()(_RsvgHandle *handle) const;
  };
  using Handle = std::unique_ptr<_RsvgHandle, Close>;

  SvgDrawing(Handle handle, double width, double height)
      : handle_(std::move(handle)), width_(width), height_(height) {}

  // Into the unit square of the current matrix; clipped to it. False where it cannot be drawn.
  // Masks, filters and embedded pictures become samples, 72 an inch of the surface, so a PDF page
  // that holds such a drawing (DrawingHead::rasterised_parts) is best made large and placed small.
  bool draw(_cairo *cairo) const;
  double width() const { return width_; } // CSS pixels, 1/96 in
  double height() const { return height_; }

private:
  Handle handle_;
  double width_ = 0, height_ = 0;
};

// Only for bytes that inspect() took: it has drawn them under bounds before. Files that ask for
// other files are refused.
Outcome<SvgDrawing> open_svg(std::string_view bytes);

} // namespace bodkin::art
