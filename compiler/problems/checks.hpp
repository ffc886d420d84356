// Every check by name, with the page that `bodkin explain` prints for it.
#pragma once

#include "problems/problem.hpp"

#include <span>
#include <string_view>

namespace bodkin {

struct Check {
  std::string_view name;    // "mixed-stock"
  Kind kind;                // as it usually comes
  std::string_view title;   // "Two papers asked of one sheet"
  std::string_view page;    // some sentences: what it means on paper, how to mend it, one example
};

std::span<const Check> all_checks(); // by name
const Check *check_named(std::string_view name);

} // namespace bodkin
