// The PDFs of an edition, written from its plates: one after another, each whole.
#pragma once

#include "press/plates.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace bodkin::press {

struct Imprint {
  std::string title, maker; // maker may be empty
  Date dated;               // year 0: no date is written
  std::string producer;     // "Bodkin 0.1.0"
  std::string digest; // of all that it was made from, in hexadecimal: the PDF's own identifier
};

// Takes the bytes of a PDF as they come. May throw where they cannot be kept.
using Sink = std::function<void(std::string_view)>;

class Outputs {
public:
  Outputs(Plates &plates, Imprint imprint);

  void sheets(const Sink &sink); // two pages a sheet, front and back, never turned
  void pass(const Pass &pass, const Sink &sink);
  void proof(const Sink &sink);

private:
  QPDFObjectHandle side_form(int sheet, int side);
  void write(const std::vector<QPDFObjectHandle> &pages, std::string_view kind, const Sink &sink);
  QPDFObjectHandle proof_page(std::size_t spread, int left, int right);
  QPDFObjectHandle page_group(int page);

  Plates &plates_;
  Imprint imprint_;
  std::vector<std::array<QPDFObjectHandle, 2>> sides_; // made when first asked for
};

} // namespace bodkin::press
