// Papers by name: ISO 216 A sizes (841 x 1189 mm halved and rounded down), SRA3 (ISO 217) and the
// American cut sizes (ANSI/ASME Y14.1 for letter and tabloid), with their halves and quarters.
#pragma once

#include "measure/box.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace bodkin {

struct NamedPaper {
  std::string_view name;
  Size size; // upright: the short edge across
};

std::span<const NamedPaper> named_papers();
std::optional<Size> paper_named(std::string_view name);
// The name of a size in either direction, or "5 1/2in x 8 1/2in".
std::string written(const Size &size, Ruler ruler);
// Metric papers are spoken of in millimetres.
Ruler ruler_of(const Size &size);

} // namespace bodkin
