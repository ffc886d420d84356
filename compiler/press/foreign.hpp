// Pages of other programs' PDFs as forms: vectors and type stay as they are. What their programs
// and cameras wrote beside them (metadata, markers in photographs) is left behind.
#pragma once

#include "art/inspect.hpp"
#include "page/transform.hpp"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <qpdf/QPDF.hh>
#include <string>
#include <string_view>

namespace bodkin::press {

struct ForeignPage {
  QPDFObjectHandle form;
  Transform to_picture; // from the form's space to the unit square as seen, y down
};

class Foreigners {
public:
  explicit Foreigners(QPDF &pdf) : pdf_(pdf) {}
  // None where it cannot be read, or made grey where that is asked: it is then drawn as samples.
  std::optional<ForeignPage> page(const std::string &path, std::string_view bytes, int number,
                                  bool grey);

private:
  QPDFObjectHandle form_of(const std::string &path, std::string_view bytes, int number, bool grey);

  QPDF &pdf_;
  // By whether it is to be grey: greying changes what the pages of one file share.
  std::array<std::map<std::string, std::shared_ptr<QPDF>>, 2> open_;
  std::array<std::map<std::pair<std::string, int>, std::optional<ForeignPage>>, 2> made_;
};

} // namespace bodkin::press
