// What comes back: each way of selling, copies given away, and how many have to be sold before the
// run is paid.
#pragma once

#include "edition/edition.hpp"
#include "edition/run_set.hpp"
#include "money/exact.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

struct Estimate;
enum class Group;

struct SaleFigures {
  std::string where;
  std::string run; // whose copies are sold so; empty: of any
  Range from;
  std::int64_t copies = 0;   // 0: not said
  Exact price, keeps, costs; // a copy: what the buyer pays, the shop keeps, the sale costs
  Exact costs_once;
  Exact makes;                            // what it costs to make
  Exact brings;                           // price less keeps and costs
  Exact margin;                           // that less what a copy costs to make
  Exact income;                           // of the copies said, costs once taken off
  std::optional<std::int64_t> paid_after; // copies sold so alone pay for the run; none: never
};

struct Sales {
  std::vector<SaleFigures> ways;              // as written
  std::int64_t sold = 0, given = 0, left = 0; // left: below 0 where too many are spoken for
  Exact income, remains;                      // remains: income less the run
  // Sold in the order of the lines; none: not even when all are sold.
  std::optional<std::int64_t> paid_after;
};

// Nothing where no way of selling, and no gift, is written.
std::optional<Sales> sales_of(const Edition &edition, const Estimate &estimate);

// What was really paid, beside what was estimated to leave the purse for it.
struct PaidFigures {
  std::string what; // "printing"
  Range from;
  Exact paid, estimated;
  PaidFor kind = PaidFor::everything;
  RunSet only{}; // of one run, what is its own
};
bool is_for(PaidFor what, Group group);
std::vector<PaidFigures> paid_of(const Edition &edition, const Estimate &estimate);

} // namespace bodkin
