// The offers of other printers, bare and like for like.
//
// An offer covers printing, paper, folding and stapling of good copies. What it cannot do is listed
// (bid_fit.hpp), and what stays the maker's work beside it is priced.
#pragma once

#include "money/bill.hpp"

#include <span>
#include <vector>

namespace bodkin {

// The first so many bids, as many as anyone would compare.
std::span<const Bid> compared_bids(const Edition &edition);

// The bid's own money for a run: copies, setup, postage and tax. Nothing is offered below its first
// step. Refers to both.
Way bare_way(const Edition &edition, const Bid &bid);

// That and what stays the maker's, on good copies only. Refers to the bid and the bill.
Way like_for_like_way(const Edition &edition, const Bid &bid, const Bill &bill);

// One's own making, then each bid that is compared, like for like. Refers to all three.
std::vector<Way> ways_to_make(const Edition &edition, const Bill &bill,
                              const std::vector<BidFigures> &bids);

std::vector<BidFigures> bid_figures(const Edition &edition, const Imposition &imposition,
                                    const Bill &bill);

} // namespace bodkin
