// Another printer's offer for the whole run.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "measure/box.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

struct BidStep {
  std::int64_t from_copies = 1; // this price for each copy from this many on
  Rate rate;
  Range range;
};

// How many pages a printer binds: `8 to 64, by 4`.
struct BidPages {
  std::int64_t least = 1, most = 0, by = 1; // most 0: no bound
};

// The printer's papers, by the names of stocks. Where they do not mix, a copy is all on one.
struct BidPapers {
  std::vector<std::string> names;
  bool mixed = true;
};

struct Bid {
  std::string name, title;
  Range range;
  std::vector<Known<Mode>> prints;
  std::vector<BidStep> steps;   // by from_copies
  std::vector<BidStep> postage; // likewise; nothing below the first
  std::optional<Known<BidPages>> pages;
  std::optional<Known<BidPapers>> papers; // none: one white house stock
  std::vector<Known<Size>> sizes;         // of pages, upright; empty: any
  std::optional<Known<Date>> until;
  std::optional<Known<Rate>> setup;
  std::optional<Known<Share>> tax; // on all of its bill, postage too
};

} // namespace bodkin
