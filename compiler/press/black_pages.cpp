#include "press/black_pages.hpp"

#include "press/grey_form.hpp"

#include <stdexcept>

namespace bodkin::press {
namespace {

QPDFObjectHandle form_of(QPDFObjectHandle page) {
  QPDFObjectHandle form = page.getKey("/Contents");
  QPDFObjectHandle dict = form.getDict();
  dict.replaceKey("/Type", QPDFObjectHandle::newName("/XObject"));
  dict.replaceKey("/Subtype", QPDFObjectHandle::newName("/Form"));
  dict.replaceKey("/BBox", page.getKey("/MediaBox"));
  dict.replaceKey("/Resources", page.getKey("/Resources"));
  if (!grey_form(form, Greying::all))
    throw std::runtime_error("lines drawn in black could not be made grey");
  return form;
}

} // namespace

std::vector<QPDFObjectHandle> BlackPages::finish() {
  drawn_ = vectors_.finish();
  lines_.setSuppressWarnings(true);
  lines_.processMemoryFile("black pages", drawn_.data(), drawn_.size());
  std::vector<QPDFObjectHandle> forms;
  for (const QPDFObjectHandle &page :
       lines_.getRoot().getKey("/Pages").getKey("/Kids").getArrayAsVector())
    forms.push_back(lines_.makeIndirectObject(form_of(page)));
  return forms;
}

} // namespace bodkin::press
