#include "press/black_pages.hpp"

#include "press/grey_form.hpp"

namespace bodkin::press {
std::vector<QPDFObjectHandle> BlackPages::finish() {
  drawn_ = vectors_.finish();
  lines_.setSuppressWarnings(true);
  lines_.processMemoryFile("black pages", drawn_.data(), drawn_.size());
  std::vector<QPDFObjectHandle> forms;
  for (const QPDFObjectHandle &page :
       lines_.getRoot().getKey("/Pages").getKey("/Kids").getArrayAsVector())
    forms.push_back(lines_.makeIndirectObject(black_form(page)));
  return forms;
}

} // namespace bodkin::press
