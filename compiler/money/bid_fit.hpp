// What a printer's offer can and cannot make of this edition.
#pragma once

#include "money/bill.hpp"

#include <string>
#include <vector>

namespace bodkin {

struct BidFit {
  std::vector<std::string> cannot; // "a second paper: …"
  // Why it could not print this edition at all, or not any more: it is listed, but compared with
  // nothing. Empty where it can.
  std::string left_out;
};

BidFit fit_of(const Edition &edition, const Imposition &imposition, const Bill &bill,
              const Bid &bid);

// "board, cream and rose"; of many the first few and how many more.
std::string listed(std::vector<std::string> names);

} // namespace bodkin
