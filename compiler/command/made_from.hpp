// made-from.json: every file that an edition was made from, with its SHA-256, and every file that
// was made. The same manuscript and files give the same bytes.
#pragma once

#include "command/way.hpp"

#include <string>
#include <vector>

namespace bodkin {

inline constexpr const char *made_from_name = "made-from.json";
inline constexpr const char *dummy_name = "dummy.pdf"; // of `bodkin dummy`

std::string made_from(const std::string &edition, const std::vector<InputFile> &inputs,
                      const std::vector<std::string> &outputs);
// The outputs that such a file lists; empty where it is none.
std::vector<std::string> outputs_listed(std::string_view json);

// One rule for Make or Ninja: the target, then all that it depends on.
std::string make_rule(const std::string &target, const std::vector<InputFile> &inputs);

} // namespace bodkin
