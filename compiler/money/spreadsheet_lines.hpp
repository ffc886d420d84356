// The lines of an estimate in a spreadsheet: how many, at how much, and what that comes to, all of
// it formulas of the copies wherever the estimate reckons it from them.
#pragma once

#include "money/spreadsheet_copies.hpp"
#include "money/spreadsheet_steps.hpp"

#include <string>
#include <vector>

namespace bodkin::spread {

class LineRows {
public:
  // Where no spares are made, as beside an offer, `with_spares` is false.
  LineRows(const Edition &edition, const CopyRows &copies, const StepRows &steps, bool with_spares);
  void write(Rows &rows, const std::vector<Charge> &charges);

  struct Line {
    Charge charge;
    int row = 0;
  };
  const std::vector<Line> &lines() const { return lines_; }
  std::string total() const; // a formula
  int first() const { return first_; }
  int last() const { return first_ + static_cast<int>(lines_.size()) - 1; }

private:
  void add_least(MachineId machine);
  void write_line(Rows &rows, const Charge &charge) const;
  std::string least(const Charge &charge) const;
  std::string taxed(const Charge &tax) const;
  std::string sides(const Counted &of) const;
  template <typename Holds>
  std::string sum(char column, const Holds &holds) const {
    std::vector<std::string> cells;
    for (const Line &line : lines_)
      if (holds(line.charge))
        cells.push_back(at(column, line.row));
    return sum_of(cells);
  }

  const Edition &edition_;
  const CopyRows &copies_;
  const StepRows &steps_;
  bool with_spares_;
  int first_ = 0;
  std::vector<Line> lines_;
};

} // namespace bodkin::spread
