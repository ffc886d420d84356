#include "press/contents.hpp"

#include "press/number.hpp"

namespace bodkin::press {
namespace {

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }

QPDFObjectHandle box(double width, double height) {
  return QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0, 0, width, height));
}

} // namespace

void Contents::matrix(const Transform &map) { append_matrix(text_, map); }

void Contents::clip(const Polygon &corners) { append_clip(text_, corners); }

void Contents::draw(QPDFObjectHandle xobject) {
  text_ += "/X" + std::to_string(drawn_.size()) + " Do\n";
  drawn_.push_back(xobject);
}

void Contents::state(QPDFObjectHandle graphics_state) {
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

QPDFObjectHandle Contents::page(QPDF &pdf, double width, double height) const {
  QPDFObjectHandle page = QPDFObjectHandle::newDictionary();
  page.replaceKey("/Type", name("/Page"));
  page.replaceKey("/MediaBox", box(width, height));
  page.replaceKey("/Resources", resources());
  if (!empty())
    page.replaceKey("/Contents", pdf.newStream(text_));
  return pdf.makeIndirectObject(page);
}

QPDFObjectHandle Contents::form(QPDF &pdf, double width, double height) const {
  QPDFObjectHandle form = pdf.newStream(text_);
  QPDFObjectHandle dict = form.getDict();
  dict.replaceKey("/Type", name("/XObject"));
  dict.replaceKey("/Subtype", name("/Form"));
  dict.replaceKey("/BBox", box(width, height));
  dict.replaceKey("/Resources", resources());
  return form;
}

} // namespace bodkin::press
