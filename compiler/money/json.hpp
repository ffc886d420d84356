// JSON written by hand, since quantities are exact decimals that a JSON library would pass through
// a double.
#pragma once

#include "money/exact.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace bodkin::json {

std::string quoted(std::string_view text);
// In quotes, of two decimals in whatever currency: "880.00" yen are 880.
std::string money(const Exact &amount); // "1.25", as a string
std::string money(const std::optional<Exact> &amount);

template <typename Things, typename Write>
std::string list(const Things &things, Write write) {
  std::string out;
  for (const auto &thing : things)
    out += (out.empty() ? "" : ", ") + write(thing);
  return "[" + out + "]";
}

// One thing a line within a list, so that a change of the edition is a short difference.
template <typename Things, typename Write>
std::string tall_list(const Things &things, Write write) {
  std::string out;
  for (const auto &thing : things)
    out += (out.empty() ? "\n    " : ",\n    ") + write(thing);
  return out.empty() ? "[]" : "[" + out + "\n  ]";
}

} // namespace bodkin::json
