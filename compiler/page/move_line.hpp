// A line that is set, moved within its place.
#pragma once

#include "type/set.hpp"

namespace bodkin {

void move_line(Line &line, Length dx, Length dy);

} // namespace bodkin
