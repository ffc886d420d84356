#include "page/qr.hpp"

#include <memory>
#include <qrencode.h>

namespace bodkin {
namespace {

struct CodeGone {
  void operator()(QRcode *code) const { QRcode_free(code); }
};

} // namespace

std::optional<SetQr> qr_of(const std::string &text, Paint paint) {
  const std::unique_ptr<QRcode, CodeGone> code(
      QRcode_encodeData(static_cast<int>(text.size()),
                        reinterpret_cast<const unsigned char *>(text.data()), 0, QR_ECLEVEL_M));
  if (!code)
    return std::nullopt;
  SetQr qr{.modules = code->width, .dark = {}, .paint = paint};
  const std::size_t count =
      static_cast<std::size_t>(code->width) * static_cast<std::size_t>(code->width);
  qr.dark.reserve(count);
  for (std::size_t i = 0; i < count; ++i)
    qr.dark.push_back((code->data[i] & 1) != 0);
  return qr;
}

} // namespace bodkin
