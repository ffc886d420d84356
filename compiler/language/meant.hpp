// The values of a line as it was meant: where a line cannot be read and one is handed out to be
// typed instead, later rooms work with what that one says. A slip is told once, and what would
// follow from half of a line is not told at all.
#pragma once

#include "language/match.hpp"
#include "language/slips.hpp"

#include <string>

namespace bodkin::language {

// Puts the values of `meant` in the place of what was read of the statement. Their ranges are those
// of the line as it stands: exact where both lines agree, else the words in which they differ.
void read_as_meant(const Typed &line, const std::string &meant, Tree &tree, Statement &statement);

} // namespace bodkin::language
