// Problems as a maker reads them on a terminal, and as JSON and SARIF 2.1.0 (OASIS) for programs.
#pragma once

#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace bodkin {

// By file in order of reading, then place, then kind; the same problem said twice is kept once.
void sort_problems(Problems &problems);
bool any_errors(const Problems &problems);

struct Tally {
  std::size_t errors = 0, warnings = 0, notes = 0;
  bool operator==(const Tally &) const = default;
};
Tally counted(const Problems &problems);
std::string written(const Tally &counts); // "2 errors, 1 warning and 3 notes"; "nothing wrong"
std::string_view word_for(Kind kind);     // "error"

// At most limits::problems_shown of them, errors before warnings before notes where there are more,
// and then a note that counts the rest. The renderings below show these.
Problems shown(const Problems &problems);

// `file:line:column: kind: message [check]` (the GNU coding standards' form, so that editors jump),
// the line with the exact words underlined, `why` and `type` wrapped to 100 columns, related places
// as notes. Tabs and wide characters keep the underline true. A problem that stands in no file says
// `bodkin:` instead of a place. Several problems are parted by an empty line; colours are ANSI's.
std::string as_text(const Problem &problem, const Sources &sources, bool colour);
std::string as_text(const Problems &problems, const Sources &sources, bool colour);

// {"problems": [{"kind", "check", "file", "line", "column", "end_line", "end_column", "message",
// "why", "type", "ways", "related", "edits"}]}: columns count code points from 1, ends are
// exclusive; a problem that stands in no file has null for its place. `type` is the first way out,
// `ways` are all of them.
std::string as_json(const Problems &problems, const Sources &sources);
std::string as_sarif(const Problems &problems, const Sources &sources, const std::string &version);

} // namespace bodkin
