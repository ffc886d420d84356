// The estimate for people and for programs.
#pragma once

#include "money/estimate.hpp"
#include "problems/sources.hpp"

#include <string>

namespace bodkin {

// Plain text for 80 columns: every line as quantity × rate = total with the place of its price, so
// that a pencil can check it. `anyway` stamps a budget that is over but was passed all the same.
std::string estimate_as_text(const Edition &edition, const Estimate &estimate,
                             const Sources &sources, bool anyway);

// One JSON document with a line's end: money as decimal strings in the edition's currency. `post`
// is the value of its last key, a list of mailings: post is reckoned by a room below this one.
std::string estimate_as_json(const Estimate &estimate, const Sources &sources,
                             const std::string &post = "[]");

} // namespace bodkin
