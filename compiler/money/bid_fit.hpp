// What a printer's offer can and cannot make of this edition.
#pragma once

#include "money/bill.hpp"

#include <string>
#include <vector>

namespace bodkin {

struct BidFit {
  std::vector<std::string> cannot; // "a second paper: …"
  // It could not print this edition at all, or not any more: listed, but compared with nothing.
  bool another_edition = false;
};

BidFit fit_of(const Edition &edition, const Imposition &imposition, const Bill &bill,
              const Bid &bid);

// "board, cream and rose"; of many the first few and how many more.
std::string listed(std::vector<std::string> names);

} // namespace bodkin
