#include "press/fonts.hpp"

#include <cairo-ft.h>

namespace bodkin::press {

cairo_scaled_font_t *Fonts::at(const FaceCut &cut, Length size) {
  ScaledFont &font = scaled_[{&cut, size}];
  if (font)
    return font.get();
  FontFace &face = faces_[&cut];
  if (!face)
    face.reset(cairo_ft_font_face_create_for_ft_face(cut.freetype(), FT_LOAD_NO_HINTING));
  cairo_matrix_t scale, identity;
  cairo_matrix_init_scale(&scale, size.in_points(), size.in_points());
  cairo_matrix_init_identity(&identity);
  cairo_font_options_t *options = cairo_font_options_create();
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  font.reset(cairo_scaled_font_create(face.get(), &scale, &identity, options));
  cairo_font_options_destroy(options);
  return font.get();
}

} // namespace bodkin::press
