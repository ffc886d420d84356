// Content streams that place objects, and the page objects that hold them.
#pragma once

#include "page/transform.hpp"

#include <qpdf/QPDF.hh>
#include <string>
#include <string_view>

namespace bodkin::press {

class Contents {
public:
  void save() { text_ += "q\n"; }
  void restore() { text_ += "Q\n"; }
  void matrix(const Transform &map);
  void clip(const Polygon &corners);
  void draw(QPDFObjectHandle xobject);
  void state(QPDFObjectHandle graphics_state);
  bool empty() const { return text_.empty(); }

  QPDFObjectHandle page(QPDF &pdf, double width, double height) const;
  QPDFObjectHandle form(QPDF &pdf, double width, double height) const;

private:
  QPDFObjectHandle resources() const;
  std::string text_;
  std::vector<QPDFObjectHandle> drawn_, states_;
};

} // namespace bodkin::press
