// Cairo's fonts for the cuts that type has opened: one font face for each file, so that it is
// embedded once, and a scaled font for each size of it.
#pragma once

#include "press/owners.hpp"
#include "type/set.hpp"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace bodkin::press {

class Fonts {
public:
  cairo_scaled_font_t *at(const FaceCut &cut, Length size);

  // Where glyphs are laid ready for Cairo, again and again.
  struct Tray {
    std::string text;
    std::vector<cairo_glyph_t> glyphs;
    std::vector<cairo_text_cluster_t> clusters;
    void clear() {
      text.clear();
      glyphs.clear();
      clusters.clear();
    }
  };
  Tray &tray() { return tray_; }

private:
  Tray tray_;
  std::map<const FaceCut *, FontFace> faces_;
  std::map<std::pair<const FaceCut *, Length>, ScaledFont> scaled_;
};

} // namespace bodkin::press
