// Which way words run (Unicode UAX #9), through FriBidi.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace bodkin {

struct Directions {
  std::uint8_t base = 0;            // of the paragraph: even runs to the right, odd to the left
  std::vector<std::uint8_t> levels; // by byte; empty where the whole text runs to the right
};

// The paragraph runs as its first strong letter does; to the right without one.
Directions directions_of(std::string_view text);

// The order from left to right of pieces that stand in reading order, by their levels (rule L2).
std::vector<std::size_t> visual_order(const std::vector<std::uint8_t> &levels);

} // namespace bodkin
