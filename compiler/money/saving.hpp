// Changes to an edition that might bring it under its budget: colour taken out of a side, one of
// the edition's own papers or machines in place of another, more on a sheet. Each can really be
// applied, alone or with others.
#pragma once

#include "money/changed_lines.hpp"
#include "money/colour_savings.hpp"
#include "money/estimate.hpp"
#include "money/layings.hpp"

#include <string>
#include <variant>
#include <vector>

namespace bodkin {

// Another of the edition's machines for all that names none.
struct MachineSwap {
  MachineId from = MachineId::none, to = MachineId::none;
};

// What a maker gives up, the cheapest first: nothing at all, looks, or the way it is made.
enum class Loss { nothing, looks, making };

struct Saving {
  std::variant<ColourOut, BlackPages, PaperSwap, MachineSwap, Laying> change;
  std::string what; // "pages 9-12 in black", "cream in place of rose"
  Loss loss = Loss::making;
  bool cover = false;
  std::size_t pages = 0; // that lose something
};

// Savings of this edition, the cheapest loss first: of a kind the fewest pages, and the cover last.
std::vector<Saving> savings(const Edition &edition, const Laid &laid, const PagesDrawn &drawn,
                            const Sources &sources);

// The edition with these savings made, and the lines to type for it.
Edition applied(Edition edition, const std::vector<Saving> &made, const Sources &sources);
ChangedLines lines_to_type(const Edition &edition, const std::vector<Saving> &made,
                           const Sources &sources);

// The edition with all that is on its pages left out, which is enough to fold and to price it and
// light to copy.
Edition without_matter(const Edition &edition);

// Whether a saving still means something beside those already made.
bool goes_with(const Saving &saving, const std::vector<Saving> &made);

} // namespace bodkin
