// Every check by name, with the page that `bodkin explain` prints for it. The pages stand in one
// file for each family of checks and are read by makers.
#pragma once

#include "problems/problem.hpp"

#include <span>
#include <string>
#include <string_view>

namespace bodkin {

struct Check {
  std::string_view name;    // "mixed-stock"
  Kind kind;                // as it usually comes
  std::string_view title;   // "Two papers asked of one sheet"
  std::string_view page;    // some sentences: what it means on paper
  std::string_view mend;    // what to do about it
  std::string_view example; // lines of a manuscript, each with its line end
};

std::span<const Check> all_checks(); // by name
const Check *check_named(std::string_view name);

// The whole page as `bodkin explain` prints it, ready for a terminal, with its line end.
std::string explain_page(const Check &check);

} // namespace bodkin
