// Price steps of machines as tables of a spreadsheet, in which a line looks its rate up.
#pragma once

#include "money/charge.hpp"
#include "money/spreadsheet_cells.hpp"

#include <map>
#include <span>
#include <string>
#include <tuple>

namespace bodkin::spread {

class StepRows {
public:
  // Of all machines, modes and sizes that these are charged by.
  StepRows(const Edition &edition, Rows &rows, std::span<const Charge> charges);
  // The rate of a line at so many sides of its machine's mode.
  std::string rate(const Charge &charge, const std::string &sides) const;

private:
  using Key = std::tuple<MachineId, Mode, Size>;
  struct Table {
    int first, last;
  };
  static Key key_of(const Counted &counted);
  std::map<Key, Table> tables_;
};

} // namespace bodkin::spread
