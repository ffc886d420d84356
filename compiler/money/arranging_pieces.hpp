// What a copy holds beside its book, which costs the same in any order of the book's pages.
#pragma once

#include "money/charged.hpp"
#include "money/exact.hpp"

#include <compare>
#include <map>
#include <optional>

namespace bodkin::arranging {

// Sides that one line of an estimate counts.
struct PrintedPieces {
  MachineId machine = MachineId::none;
  Mode mode = Mode::black;
  std::optional<Size> size; // where its price is that of a size
  RunSet only;
  Size sheet;
  Exact sides; // of the run, each sheet printed whole
};

class BesideTheBook {
public:
  BesideTheBook(const Edition &edition, const Laid &laid);

  const std::vector<PrintedPieces> &printed() const { return printed_; }
  Exact sides(MachineId machine, Mode mode) const;
  const Exact &papers() const { return papers_; } // money
private:
  void take_sides(const ChargedSide &side, const Sheet &sheet);
  void take_papers();

  const Edition &edition_;
  const Imposition &imposition_;
  std::vector<PrintedPieces> printed_;
  Exact papers_;
};

} // namespace bodkin::arranging
