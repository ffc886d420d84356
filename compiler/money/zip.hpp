// Files put into one, as they are: the container of ODF packages (ZIP by PKWARE's APPNOTE,
// ISO/IEC 21320-1), stored and not deflated, without dates, so that the same files give the same
// bytes.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace bodkin {

struct ZippedFile {
  std::string_view name;
  std::string_view bytes;
};
std::string zipped(std::span<const ZippedFile> files);

} // namespace bodkin
