// Where the elements that work is done for, or that have a source, stand on a copy: their own page,
// the pages that repeat it, spreads, running matter, and standing matter wherever it is laid.
#pragma once

#include "edition/edition.hpp"

#include <optional>
#include <vector>

namespace bodkin {

struct StandingCharge {
  ElementId element = ElementId::none;        // the first of those written on the same line
  std::vector<int> pages;                     // one entry for each place, in order of pages
  std::optional<Known<std::uint32_t>> only{}; // the run whose copies alone hold the piece
};

// Where an element comes from: what itself says, else the text that runs through it; `none` where
// neither says anything.
SourceId source_of(const Edition &edition, const Element &element);

// In order of first appearance. Only hand matter, elements that take time or cost money, and
// elements with a source: nothing else concerns the estimate.
std::vector<StandingCharge> where_work_stands(const Edition &edition);
// In the pieces too, whose pages are numbered on; once for each of a piece that a copy holds.
std::vector<StandingCharge> where_work_stands_in_all(const Edition &edition);

} // namespace bodkin
