// Problems as a maker reads them on a terminal, and as JSON and SARIF 2.1.0 (OASIS) for programs.
#pragma once

#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <string>

namespace bodkin {

// By file in order of reading, then place, then kind; the same problem said twice is kept once.
void sort_problems(Problems &problems);
bool any_errors(const Problems &problems);

// The shape of messages.md: `file:line:column: kind: message [check]`, the line with the exact words
// underlined, `why` and `type` wrapped to 100 columns. Tabs and wide characters keep the underline true.
std::string as_text(const Problem &problem, const Sources &sources, bool colour);
std::string as_text(const Problems &problems, const Sources &sources, bool colour);

std::string as_json(const Problems &problems, const Sources &sources);
std::string as_sarif(const Problems &problems, const Sources &sources, const std::string &version);

} // namespace bodkin
