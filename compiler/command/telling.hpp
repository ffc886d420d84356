// What the verbs print alike.
#pragma once

#include "command/options.hpp"
#include "command/verbs.hpp"
#include "command/way.hpp"

namespace bodkin {

// Whether the problems stop the sheets: errors, and with --strict warnings too.
bool stopped(const WayThrough &way, const Options &options);
// Problems as text on standard error, or as the JSON or SARIF that was asked for on standard
// output.
void tell_problems(const WayThrough &way, const Options &options, const Desk &desk);
void print(std::string_view text); // on standard output; throws CannotWrite where it is closed

// "12 errors, 1 warning and 3 notes"; empty where there is none.
std::string tally(const Problems &problems);

} // namespace bodkin
