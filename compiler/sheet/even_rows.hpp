// How pieces of one size are cut out of a sheet: in even columns and rows, so that a guillotine
// goes straight through.
#pragma once

#include "measure/box.hpp"

#include <cstdint>
#include <optional>

namespace bodkin {

struct EvenRows {
  Size sheet;
  int columns = 1, rows = 1;
  Length left, top; // of the first

  Spot origin(int column, int row, const Size &cell) const {
    return {left + cell.width * column, top + cell.height * row};
  }
};

// So many on the paper upright or lying across, round its middle, whichever wastes less. None where
// they do not go.
std::optional<EvenRows> best_cells(const Size &paper, const Size &cell, std::int64_t count);

// The largest number that goes, as far as anybody cuts them apart.
std::int64_t most_on(const Size &paper, const Size &cell);
bool more_than_anybody_cuts(const Size &paper, const Size &cell);

} // namespace bodkin
