// The vector things of all pages, drawn by Cairo into one PDF in memory, a page of it for each
// layer; libqpdf then takes its pages as forms.
#pragma once

#include "press/owners.hpp"

#include <string>

namespace bodkin::press {

class Vectors {
public:
  Vectors();
  // A new layer of a size in points; the context has y down from its top left. The number that it
  // is known by counts from 0.
  cairo_t *begin(double width, double height);
  int end();
  // The whole PDF; nothing can be drawn after that. Throws std::runtime_error where Cairo failed.
  std::string finish();

private:
  std::string bytes_;
  Surface surface_;
  Context context_;
  int layers_ = 0;
};

} // namespace bodkin::press
