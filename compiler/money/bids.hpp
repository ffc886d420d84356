// The offers of other printers, bare and like for like.
//
// An offer covers printing, paper, folding and stapling of good copies on one white stock. What it
// cannot do is listed, and what stays the maker's work beside it is priced.
#pragma once

#include "money/bill.hpp"

#include <span>
#include <vector>

namespace bodkin {

// The first so many bids, as many as anyone would compare.
std::span<const Bid> compared_bids(const Edition &edition);

// The bid's own money for a run. Nothing is offered below its first step.
Way bare_way(const Bid &bid, Currency currency);

// That and what stays the maker's, on good copies only. Refers to the bid and the bill.
Way like_for_like_way(const Edition &edition, const Bid &bid, const Bill &bill);

std::vector<BidFigures> bid_figures(const Edition &edition, const Imposition &imposition,
                                    const Bill &bill);

} // namespace bodkin
