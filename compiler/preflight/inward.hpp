// The line that brings a thing back inside its page.
#pragma once

#include "preflight/edge_problems.hpp"

namespace bodkin {

// Adds the way out to the problem, where the thing's own lines allow one; the thing is moved by
// what a ruler shows, and made smaller only where there is no room to move.
void type_inward(const Inspection &inspection, const Matter &matter, Problem &problem);

// "1/4in right and 1/8in up"
std::string directions(const Inspection &inspection, const Matter &matter);

} // namespace bodkin
