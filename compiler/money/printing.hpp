// What machines charge for the sides of a run: price steps, prices of a size, blank sides and tax.
#pragma once

#include "money/charge.hpp"
#include "money/exact.hpp"
#include "money/way.hpp"

#include <map>
#include <optional>
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

// The charges of a run of `printed_copies` (copies and spares), by machine as first met, the
// dearest mode first, each machine's tax after them. They hold up to `holds_to` printed copies,
// where the next price step begins to count.
struct Printing {
  std::vector<Charge> charges, taxes;
  std::vector<Unpriced> unpriced;
  std::vector<RoundedUp> rounded; // what the charges hold of it for this run
  std::int64_t holds_to = 0;
};

Printing printing(const Edition &edition, const SideCounts &counts, std::int64_t printed_copies);

} // namespace bodkin
