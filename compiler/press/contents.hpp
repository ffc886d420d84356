// Content streams that place objects, and the page objects that hold them.
#pragma once

#include "page/transform.hpp"
#include "press/strokes.hpp"

#include <map>
#include <qpdf/QPDF.hh>
#include <string>
#include <string_view>

namespace bodkin::press {

// A stream of content, already deflated: the writer passes such bytes on as they are.
QPDFObjectHandle content_stream(QPDF &pdf, std::string_view content);

// Streams by what they say.
using ContentStreams = std::map<std::string, QPDFObjectHandle>;

class Contents {
public:
  void save() { text_ += "q\n"; }
  void restore() { text_ += "Q\n"; }
  void matrix(const Transform &map);
  void clip(const Polygon &corners);
  void draw(const QPDFObjectHandle &xobject);
  void state(const QPDFObjectHandle &graphics_state);
  void draw(const Strokes &drawing);
  bool empty() const { return text_.empty(); }

  // `box` is what the page, or form, measures.
  QPDFObjectHandle page(QPDF &pdf, const QPDFObjectHandle &box) const;
  // Pages that place other objects in the same way have one stream.
  QPDFObjectHandle page(QPDF &pdf, const QPDFObjectHandle &box, ContentStreams &streams) const;
  QPDFObjectHandle form(QPDF &pdf, const QPDFObjectHandle &box) const;

private:
  QPDFObjectHandle resources() const;
  std::string text_;
  std::vector<QPDFObjectHandle> drawn_, states_;
};

} // namespace bodkin::press
