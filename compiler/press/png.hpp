// PDFs as pictures of their pages, for looking at on a screen.
#pragma once

#include "press/output.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace bodkin::press {

// Each page at a number of dots an inch, on white, as PNG: `sink(page from 1, bytes)`. Throws
// std::runtime_error where the PDF cannot be drawn.
void pages_as_png(std::string_view pdf, int dpi,
                  const std::function<void(int page, std::string_view png)> &sink);

} // namespace bodkin::press
