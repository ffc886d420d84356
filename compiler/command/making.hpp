// What the papers of an edition are written from, gathered from the way that it walked.
#pragma once

#include "command/way.hpp"
#include "paperwork/making.hpp"

namespace bodkin {

// Refers to `way`, which must outlive it.
paperwork::Making making_of(const WayThrough &way);

} // namespace bodkin
