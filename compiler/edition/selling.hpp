// What becomes of the copies, and of the money: as a maker writes it under `edition`.
#pragma once

#include "edition/known.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace bodkin {

// A rate of exchange as the maker knows it: `£1 is $1.27`.
struct Exchange {
  Price foreign, own;
  Range range;
};

// A way that copies are sold.
struct Sale {
  std::string where;                        // "at the table"
  std::int64_t copies = 0;                  // 0: not said
  std::optional<Known<Rate>> price;         // none: the edition's own
  std::optional<Known<Share>> share;        // of the price, that the shop keeps
  std::optional<Known<Rate>> costs;         // of each copy sold, or once
  std::optional<Known<std::uint32_t>> only; // the run whose copies are sold so
  Range range;
};

struct Gift {
  std::int64_t copies = 0;
  std::string to; // may be empty
  Range range;
};

// What was really paid, for one part of the estimate or for all of it.
enum class PaidFor { everything, printing, paper, work };
struct Paid {
  Price amount;
  PaidFor what = PaidFor::everything;
  Range range;
  std::optional<Known<std::uint32_t>> only{}; // for the copies of this run alone
};

} // namespace bodkin
