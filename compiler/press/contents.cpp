#include "press/contents.hpp"

#include "press/deflate.hpp"
#include "press/number.hpp"

namespace bodkin::press {
namespace {

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }

} // namespace

QPDFObjectHandle content_stream(QPDF &pdf, std::string_view content) {
  QPDFObjectHandle stream = pdf.newStream();
  stream.replaceStreamData(deflated(content), name("/FlateDecode"), QPDFObjectHandle::newNull());
  return stream;
}

void Contents::matrix(const Transform &map) { append_matrix(text_, map); }

void Contents::clip(const Polygon &corners) { append_clip(text_, corners); }

void Contents::draw(const QPDFObjectHandle &xobject) {
  text_ += "/X" + std::to_string(drawn_.size()) + " Do\n";
  drawn_.push_back(xobject);
}

void Contents::draw(const Strokes &drawing) {
  save();
  text_ += drawing.text();
  restore();
}

void Contents::state(const QPDFObjectHandle &graphics_state) {
  text_ += "/G" + std::to_string(states_.size()) + " gs\n";
  states_.push_back(graphics_state);
}

QPDFObjectHandle Contents::resources() const {
  QPDFObjectHandle resources = QPDFObjectHandle::newDictionary();
  const auto add = [&](const char *kind, const char *letter,
                       const std::vector<QPDFObjectHandle> &objects) {
    if (objects.empty())
      return;
    QPDFObjectHandle dict = QPDFObjectHandle::newDictionary();
    for (std::size_t i = 0; i < objects.size(); ++i)
      dict.replaceKey(letter + std::to_string(i), objects[i]);
    resources.replaceKey(kind, dict);
  };
  add("/XObject", "/X", drawn_);
  add("/ExtGState", "/G", states_);
  return resources;
}

QPDFObjectHandle Contents::page(QPDF &pdf, const QPDFObjectHandle &box) const {
  ContentStreams none;
  return page(pdf, box, none);
}

QPDFObjectHandle Contents::page(QPDF &pdf, const QPDFObjectHandle &box,
                                ContentStreams &streams) const {
  QPDFObjectHandle page = QPDFObjectHandle::newDictionary();
  page.replaceKey("/Type", name("/Page"));
  page.replaceKey("/MediaBox", box);
  page.replaceKey("/Resources", resources());
  if (!empty()) {
    QPDFObjectHandle &stream = streams[text_];
    if (!stream.isInitialized())
      stream = content_stream(pdf, text_);
    page.replaceKey("/Contents", stream);
  }
  return pdf.makeIndirectObject(page);
}

QPDFObjectHandle Contents::form(QPDF &pdf, const QPDFObjectHandle &box) const {
  QPDFObjectHandle form = content_stream(pdf, text_);
  QPDFObjectHandle dict = form.getDict();
  dict.replaceKey("/Type", name("/XObject"));
  dict.replaceKey("/Subtype", name("/Form"));
  dict.replaceKey("/BBox", box);
  dict.replaceKey("/Resources", resources());
  return form;
}

} // namespace bodkin::press
