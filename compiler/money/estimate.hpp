// What an edition costs: line by line, a copy, the run, what leaves the purse, and the same from
// the printers who made a bid.
//
// A side is charged by the dearest mode on it, for every copy and spare; paper by the sheet used;
// hand matter and steps of finish as their rates say. All sums are exact; only what is shown is
// rounded.
#pragma once

#include "edition/run_set.hpp"
#include "money/charged.hpp"
#include "money/exact.hpp"
#include "money/sales.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

enum class Group { printing, tax, paper, hand, finish, other };
std::string_view name_of(Group group); // "printing"

// How a paper is bought: sheets at hand, and how many are cut out of one bought sheet.
struct StockOrder {
  std::int64_t have = 0;
  int out = 1;
  std::string parent{};  // what is bought, where it is cut: "tabloid"
  std::int64_t pack = 0; // sheets as bought; 0: by the sheet
  Exact price;           // of a pack, else of one sheet as bought
};

// What leaves the purse for one paper, all its lines together.
struct Purchase {
  std::string what; // as its lines name it
  Exact needed;     // sheets
  StockOrder order;

  std::int64_t missing() const; // sheets beyond those at hand
  std::int64_t bought() const;  // larger sheets where it is cut from them, else sheets
  std::int64_t packs() const;
  Exact total() const;
};

struct EstimateLine {
  std::string what; // "colour sides at corner-copier"
  Group group = Group::other;
  Exact quantity; // a count; of a tax the money it is laid on
  Exact rate;     // money each; of a tax the share
  Exact total;    // quantity × rate
  Range from;     // where the rate is written
  RunSet only{};  // whose copies have it
};

// How long a machine prints, where its speed is known.
struct MachineTime {
  std::string machine;
  Exact sides, minutes;
};

// What a copy of one of several runs costs: what all copies share, and what is its own.
struct RunFigures {
  std::string name;
  std::int64_t copies = 0, spare = 0;
  Exact per_copy;
  std::optional<Exact> price{}; // none: no price is written, or in money that does not count
  Range price_from{};
};

// Something used that no price is written for, or a price in another money: left out of the sums.
struct Unpriced {
  enum class Reason { no_price, below_least_step, other_currency };
  Reason reason = Reason::no_price;
  StockId stock = StockId::none; // one of these two, or neither of another currency's hand matter
  MachineId machine = MachineId::none;
  Mode mode = Mode::black;
  std::string what; // as a line of the estimate would name it
  std::int64_t quantity = 0;
};

struct BidFigures {
  std::string name;
  Range from;
  // Nothing where the bid offers no run as short as this.
  std::optional<Exact> run_total, per_copy, like_for_like;
  Exact setup, postage, tax;       // in run_total
  std::string until;               // the last day of the offer; empty: no end is written
  std::string left_out;            // why it crosses nothing, and is not charted; empty: it is
  std::vector<std::string> cannot; // what the bid leaves out: "a second paper: …"
  std::vector<std::string>
      still_yours; // what the maker still does: "stamp lino moon: $6.50, 16.7 min"
};

// From this many copies on, `to` is the cheapest way, where it was `from`.
struct Crossing {
  std::int64_t copies = 0;
  std::string from, to; // "own" or a bid's name
  bool operator==(const Crossing &) const = default;
};

struct BudgetHeld {
  Exact limit;
  bool of_run = false; // else of a copy
  bool over = false;   // held against the unrounded figure
  Exact over_by;       // zero where it is met
  Range from;
};

struct Estimate {
  Currency currency; // empty where the edition names no money
  std::int64_t copies = 0, spare = 0;
  std::vector<EstimateLine> lines;
  Exact run_total;     // all that is used, tax in
  Exact per_copy;      // run_total ÷ good copies
  Exact purse_total;   // paper in whole packs as bought
  Exact one_more_copy; // one further copy, the price steps reached held, nothing spread on it
  std::vector<Purchase> purchases;
  Exact minutes; // of work by hand, finish included
  std::optional<BudgetHeld> budget;
  std::vector<BidFigures> bids; // as written
  std::string
      cheapest_at_one_copy;        // "own" or a bid's name; empty where there is nothing to compare
  std::vector<Crossing> crossings; // of runs of 1 to 100,000 copies
  std::vector<Unpriced> unpriced;
  std::vector<MachineTime> machines;
  std::vector<RunFigures> runs;  // empty where all copies are alike
  std::vector<std::string> kept; // "stamp lino moon: $6.50", paid by an earlier impression
  std::optional<Sales> sales;
  std::vector<PaidFigures> paid;
};

Estimate estimate(const Edition &edition, const Imposition &imposition, const ChargedSides &sides);

} // namespace bodkin
