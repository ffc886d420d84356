// The refusals that several kinds of picture share.
#pragma once

#include "art/bounds.hpp"
#include "art/inspect.hpp"

#include <cstdint>
#include <optional>

namespace bodkin::art {

Refusal cut_off(Format format);
Refusal damaged(Format format);
// Where a header promises no samples, or more than the bounds allow.
std::optional<Refusal> refused_size(std::uint64_t width, std::uint64_t height, Format format,
                                    const Bounds &bounds);

} // namespace bodkin::art
