// Lines of figures set in columns, 80 wide.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

inline constexpr int estimate_columns = 80;

// what   quantity × rate = total   from
struct FigureRow {
  std::string what, quantity, rate, total, from;
};

// Rows under each other, all indented by two. Where they are too wide together the places go below
// their figures, and a name too long for its column stands above them.
std::vector<std::string> set_in_columns(const std::vector<FigureRow> &rows);

// A name at the left, an amount at the right, dots between.
std::string with_leader(std::string_view name, std::string_view amount);

} // namespace bodkin
