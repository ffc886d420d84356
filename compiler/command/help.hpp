// What `bodkin --help` and `bodkin VERB --help` print.
#pragma once

#include <string>
#include <string_view>

namespace bodkin {

std::string help();
std::string help_about(std::string_view verb);
std::string version(); // "0.1.0"

} // namespace bodkin
