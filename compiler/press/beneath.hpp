// What shows through a translucent wrap, on proofs: the face that lies under it in the closed copy,
// and on its insides its own print, seen from behind.
#pragma once

#include "press/plates.hpp"

#include <optional>

namespace bodkin::press {

struct Beneath {
  int page = 0;        // numbered on through all parts
  bool behind = false; // of the same leaf: seen mirrored
  double hidden = 1;   // the share of it that the paper over it hides
};
// Nothing where the paper says no opacity, or hides enough.
std::optional<Beneath> seen_beneath(const PrintJob &job, int page);

} // namespace bodkin::press
