#include "art/checks.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::art {

Refusal cut_off(Format format) {
  return {Trouble::cut_off,
          fmt::format("breaks off before the end of its {}; copy it again whole", name_of(format))};
}

Refusal damaged(Format format) {
  return {Trouble::unreadable,
          fmt::format("is a damaged {} that cannot be read; copy it again, or save it anew",
                      name_of(format))};
}

std::optional<Refusal> refused_size(std::uint64_t width, std::uint64_t height, Format format,
                                    const Bounds &bounds) {
  if (width == 0 || height == 0)
    return damaged(format);
  const auto edge = static_cast<std::uint64_t>(bounds.edge);
  // A JPEG is mostly placed as it is, row for row; others are held in memory whole.
  const auto samples = static_cast<std::uint64_t>(
      format == Format::jpeg ? bounds.samples : std::min(bounds.samples, bounds.held_samples));
  // Divided, since a product of two hostile numbers may not fit.
  if (width <= edge && height <= edge && width <= samples / height)
    return std::nullopt;
  return Refusal{
      Trouble::too_big,
      fmt::format("promises {} x {} samples; {} million in all, {} along an edge, are the "
                  "most that are read",
                  width, height, samples / 1'000'000, bounds.edge)};
}

} // namespace bodkin::art
