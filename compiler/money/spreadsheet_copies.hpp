// The cells of a spreadsheet that say how many copies are made: a row for each run, one for all.
#pragma once

#include "money/charge.hpp"
#include "money/spreadsheet_cells.hpp"

#include <string>

namespace bodkin::spread {

class CopyRows {
public:
  CopyRows(const Edition &edition, Rows &rows);
  // Formulas of the copies of some runs, or of all.
  std::string good(const RunSet &only) const { return column('B', only); }
  std::string printed(const RunSet &only) const { return column('D', only); }
  // What a charge counts, whole sheets rounded up. Beside an offer no spares are made.
  std::string counted(const Charge &charge, bool with_spares) const;

private:
  std::string column(char name, const RunSet &only) const;
  int first_ = 0, all_ = 0;
  std::uint32_t runs_ = 0;
};

} // namespace bodkin::spread
