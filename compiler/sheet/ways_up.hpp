// How many of the book or of a piece go on sheets of its papers.
#pragma once

#include "edition/edition.hpp"
#include "problems/sources.hpp"

#include <optional>
#include <vector>

namespace bodkin {

// The edition's paper, its cover's, and whatever pages ask for.
std::vector<StockId> papers_asked(const Edition &edition);

// One way of laying the book or a piece on sheets of its papers: so many in all, and how far the
// outer ones stay from the sheet's edges.
struct WayUp {
  int up = 1, columns = 1, rows = 1; // on the first kind of sheet
  Length margin;                     // the least
};
// Each number that goes, rising, with its best way, of the book or of a piece by its index; none
// where a paper has no size or the pages do not fold.
std::vector<WayUp> ways_up(const Edition &book, std::optional<std::size_t> piece,
                           const Sources &sources);

} // namespace bodkin
