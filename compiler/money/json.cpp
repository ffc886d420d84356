#include "money/json.hpp"

#include <fmt/format.h>

namespace bodkin::json {

std::string quoted(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\')
      out.append("\\").append(1, c);
    else if (static_cast<unsigned char>(c) < 0x20)
      out += fmt::format("\\u{:04x}", static_cast<int>(c));
    else
      out += c;
  }
  return out + "\"";
}

std::string money(const Exact &amount) { return quoted(amount.rounded(2)); }
std::string money(const std::optional<Exact> &amount) { return amount ? money(*amount) : "null"; }

} // namespace bodkin::json
