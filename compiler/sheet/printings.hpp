// What one machine prints of one stock: the runs that passes are made of.
#pragma once

#include "sheet/passes.hpp"

#include <algorithm>
#include <array>

namespace bodkin {

// One stock through one machine, in one mode where its modes are apart.
struct PassPrinting {
  int stock_order = 0; // of stock and piece
  std::string piece;   // empty: the book
  StockId stock = StockId::none;
  MachineId machine = MachineId::none;
  Mode mode = Mode::black; // the dearest
  PassSides sides = PassSides::both;
  std::array<bool, 2> shows{};             // some front, some back shows its copy's number
  RunSet only;                             // whose copies it is for
  std::vector<int> sheets;                 // that it prints, rising
  std::vector<std::array<bool, 2>> prints; // front, back of each
  bool numbered() const { return shows[0] || shows[1]; }
  bool prints_any(int side) const {
    return std::any_of(prints.begin(), prints.end(),
                       [side](const auto &pair) { return pair[static_cast<std::size_t>(side)]; });
  }
};

// In the order of passes: by stock as first met from the outermost sheet in, then colour before
// black, then fronts before backs.
std::vector<PassPrinting> printings(const Edition &edition, const Imposition &imposition,
                                    std::span<const SheetModes> modes);

} // namespace bodkin
