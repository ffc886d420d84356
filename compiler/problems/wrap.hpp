// Running text set in a column of a terminal.
#pragma once

#include <string>
#include <string_view>

namespace bodkin {

// The columns that a line of a report may fill.
inline constexpr int report_columns = 100;

// Breaks at spaces so that no line passes `columns`, a longer word apart. The text begins at column
// `hanging` of a line already begun; every later line starts with that many spaces. A line end in
// the text stays one. No line end at the end.
std::string wrapped(std::string_view text, int columns, int hanging);

} // namespace bodkin
