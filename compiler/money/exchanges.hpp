// Papers of an edition in place of others: the same kind in other sheets, or any no heavier.
#pragma once

#include "edition/edition.hpp"

#include <vector>

namespace bodkin {

struct PaperSwap {
  StockId from = StockId::none, to = StockId::none;
  bool operator==(const PaperSwap &) const = default;
};

// The same paper in other sheets, or any that is no heavier.
enum class Other { same_paper, no_heavier };

// For each size of sheet that papers with a price come in here the exchange that brings all that
// are used to it, each for the one most like it. None at all stands first.
std::vector<std::vector<PaperSwap>> exchanges(const Edition &edition,
                                              const std::vector<StockId> &used, Other other);

void swap_papers(Edition &part, const std::vector<PaperSwap> &swaps);
// Those of the pieces that name no paper and so have the book's.
void swap_papers_of_pieces(Edition &book, const std::vector<PaperSwap> &swaps);

} // namespace bodkin
