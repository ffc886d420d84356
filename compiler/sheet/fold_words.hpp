// Words and shapes that the problems of foldings share.
#pragma once

#include "edition/folding.hpp"
#include "problems/problem.hpp"

#include <string>

namespace bodkin {

// Without a check's name.
Problem paper_trouble(Range range, std::string message, std::string why);
Problem folding_cannot_be(Range range, std::string message, std::string why);
std::string panels_in_words(int panels); // "1 panel", "3 panels"
// "panel 3 of row 2", or "panel 3" where there is one row.
std::string panel_name(const Folding &folding, int panel);

} // namespace bodkin
