// Square codes after ISO/IEC 18004, made by libqrencode: bytes in UTF-8, error correction M.
#pragma once

#include "page/drawing.hpp"

#include <optional>
#include <string>

namespace bodkin {

// ISO/IEC 18004, table 7: version 40 at level M.
inline constexpr int most_qr_bytes = 2331;
// None where the text is empty or longer.
std::optional<SetQr> qr_of(const std::string &text, Paint paint);

// The quiet zone that a reader needs round a code, in modules on each side (ISO/IEC 18004).
inline constexpr int qr_quiet_modules = 4;

} // namespace bodkin
