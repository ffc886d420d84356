// What one's own making of an edition uses, counted once: enough to price a run of any length.
#pragma once

#include "money/jobs.hpp"
#include "money/printing.hpp"
#include "money/way.hpp"

#include <vector>

namespace bodkin {

struct Bill {
  SideCounts sides;
  std::vector<Charge> papers; // by stock, from the outermost sheet in
  std::vector<Unpriced> unpriced_papers;
  std::vector<Job> jobs;
  Amount beside_printing; // money for papers, not yet rounded up to whole sheets, and jobs
  std::vector<RoundedUp> rounded_papers;
  // Of wrap and inserts alone: no bid covers them.
  SideCounts sides_of_pieces;
  Amount papers_of_pieces;             // not yet rounded up
  std::vector<Charge> lines_of_pieces; // the same papers, line by line
  std::vector<RoundedUp> rounded_papers_of_pieces;
};

// `jobs_of_it` are the edition's jobs(), which no change of paper, ink or run alters.
Bill bill(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
          std::vector<Job> jobs_of_it);

// The lines of the estimate, in its order; `printing` is that of the run.
std::vector<Charge> charges_of(const Edition &edition, const Bill &bill, const Printing &printing);

// The run's own cost with the spares as written. Refers to both arguments.
Way own_way(const Edition &edition, const Bill &bill);

// The cost of the run, and of one further copy on the steps reached, as a straight line.
Stretch own_stretch(const Edition &edition, const Bill &bill, std::int64_t copies);

} // namespace bodkin
