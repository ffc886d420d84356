// Owners of what Cairo hands out.
#pragma once

#include <cairo.h>
#include <memory>

namespace bodkin::press {

struct SurfaceGone {
  void operator()(cairo_surface_t *surface) const { cairo_surface_destroy(surface); }
};
struct ContextGone {
  void operator()(cairo_t *context) const { cairo_destroy(context); }
};
struct FontFaceGone {
  void operator()(cairo_font_face_t *face) const { cairo_font_face_destroy(face); }
};
struct ScaledFontGone {
  void operator()(cairo_scaled_font_t *font) const { cairo_scaled_font_destroy(font); }
};
using Surface = std::unique_ptr<cairo_surface_t, SurfaceGone>;
using Context = std::unique_ptr<cairo_t, ContextGone>;
using FontFace = std::unique_ptr<cairo_font_face_t, FontFaceGone>;
using ScaledFont = std::unique_ptr<cairo_scaled_font_t, ScaledFontGone>;

} // namespace bodkin::press
