// What only proofs show: hand work, what is glued on, and keylines where a thing cannot be drawn.
#pragma once

#include "press/plates.hpp"
#include "press/strokes.hpp"

#include <optional>

namespace bodkin::press {

bool only_on_proofs(const Item &item);
// All of that of one page, in its frame; nothing where it has none.
std::optional<Strokes> draw_overlay(const PrintJob &job, int page);

} // namespace bodkin::press
