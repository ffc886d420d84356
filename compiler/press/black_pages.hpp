// Pages of one size drawn by Cairo and taken over as forms whose colours are all greys, so that a
// printer at home lays black and nothing else.
#pragma once

#include "press/vectors.hpp"

#include <qpdf/QPDF.hh>
#include <vector>

namespace bodkin::press {

class BlackPages {
public:
  BlackPages(double width, double height) : width_(width), height_(height) {} // in points

  cairo_t *begin() { return vectors_.begin(width_, height_); }
  void end() { vectors_.end(); }
  // A form for each page; nothing can be drawn after that. They belong to a document of this
  // object's, which has to live until what copies them is written.
  std::vector<QPDFObjectHandle> finish();

private:
  double width_, height_;
  Vectors vectors_;
  std::string drawn_; // the PDF that the forms are taken from
  QPDF lines_;
};

} // namespace bodkin::press
