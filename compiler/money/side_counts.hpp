// How many sides of each kind a copy and a run hold, by machine, ink, size and whose copies they
// are.
#pragma once

#include "money/charge.hpp"
#include "money/charged.hpp"
#include "money/exact.hpp"

#include <map>
#include <vector>

namespace bodkin {

// Sides of one copy that are charged alike.
struct SideCount {
  MachineId machine = MachineId::none;
  Size size; // upright
  Mode mode = Mode::black;
  Exact sides;                  // of one copy; a part of one where several are cut out of a sheet
  Exact once{};                 // of the run, where only some copies hold them
  RunSet only{};                // whose copies hold them
  std::vector<InWhole> whole{}; // of these, where several are cut out
  Counted counted{};            // for the copies of `only`
  // Of a run, each sheet printed whole.
  Exact of(std::int64_t printed) const {
    return sides * Exact(printed) + once + unused(whole, printed);
  }
};

struct SideCounts {
  std::vector<SideCount> printed;
  std::vector<SideCount> blank; // charged blank sides; their mode is settled by price
  // Of each machine, by whose copies they print; no run: those of all.
  std::map<MachineId, std::map<RunSet, std::int64_t>> passes;
};

// Of all that a copy holds, or of what lies beside the book: wrap and inserts.
enum class Whose { all, pieces };
SideCounts count_sides(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, Whose whose = Whose::all);

// To those of its kind, where there are any.
void add(std::vector<SideCount> &counts, const SideCount &more);
void add(Counted &counted, const Counted &more);

} // namespace bodkin
