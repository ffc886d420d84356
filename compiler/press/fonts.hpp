// Cairo's fonts for the cuts that type has opened: one font face for each file, so that it is
// embedded once, and a scaled font for each size of it.
#pragma once

#include "press/owners.hpp"
#include "type/set.hpp"

#include <map>
#include <utility>

namespace bodkin::press {

class Fonts {
public:
  cairo_scaled_font_t *at(const FaceCut &cut, Length size);

private:
  std::map<const FaceCut *, FontFace> faces_;
  std::map<std::pair<const FaceCut *, Length>, ScaledFont> scaled_;
};

} // namespace bodkin::press
