// What comes back, in a spreadsheet: each way of selling with its margin, and the run paid off.
#pragma once

#include "money/spreadsheet_copies.hpp"

#include <string>
#include <vector>

namespace bodkin::spread {

// The cells that hold what the run and a copy cost; `of_runs` those of a copy of each run.
struct CostCells {
  std::string run, a_copy;
  std::vector<std::string> of_runs;
};

void write_sales(const Edition &edition, const Estimate &estimate, const CopyRows &copies,
                 const CostCells &costs, Rows &rows);

} // namespace bodkin::spread
