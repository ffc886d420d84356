// The question that `bodkin arrange` answers, in numbers: pages that are alike for money, blocks
// that move whole, the places that they may lie on, and what sides and sheets cost at the least.
//
// Costs are whole billionths of the currency, of the whole run: rounded down, so that a sum of them
// is never above what the estimate says. Price steps are taken at the cheapest that an order could
// reach. What the estimate really says is worked out for each order that might win.
#pragma once

#include "edition/index.hpp"

#include <array>
#include <compare>
#include <cstdint>
#include <limits>
#include <vector>

namespace bodkin::arranging {

using Nano = std::int64_t;
inline constexpr int unasked = -1;
inline constexpr std::size_t most_works = 16;
inline constexpr std::int64_t no_limit = std::numeric_limits<std::int64_t>::max();

// A page as the copies of one run have it. Stocks and machines are indices into Costs.
struct PageInRun {
  bool draws = false;
  Mode mode = Mode::black; // black where it draws nothing
  int stock = unasked, machine = unasked;
  bool numbered = false;   // bears its copy's number; told only where it matters, as below
  std::uint32_t works = 0; // by bit: work priced by the sheet or side
  auto operator<=>(const PageInRun &) const = default;
};

// By run, the first that has a page or a sheet like it; empty: all have it alike.
using AlikeRuns = std::vector<std::uint32_t>;

struct PageKind {
  std::vector<PageInRun> runs; // one, or one for each run that is printed otherwise
  int shape = 0;               // pages of one size may change places
  AlikeRuns alike;             // told only where it matters which sheets are made apart
  auto operator<=>(const PageKind &) const = default;
};

struct MovingBlock {
  int first = 0;          // as written
  std::vector<int> kinds; // of its pages, indices into Task::kinds
  bool stays = false;
  bool from_left = false, from_right = false; // begins on a page of that hand only
  int length() const { return static_cast<int>(kinds.size()); }
};

struct PagePlaceInBook {
  int sheet = 0, side = 0;
  int shape = 0;
};

struct SheetDefaults {
  std::vector<int> stocks; // by run
  std::array<int, 2> machine{};
};

// What the price of a side hangs on beside its own mode: nothing, how many there are of its machine
// and mode, or how many of each paper too.
enum class Steps { none, by_mode, by_paper };

// Of all copies of one run together.
struct RunCosts {
  std::vector<Nano> sheet; // by stock
  std::vector<Nano> side;  // (stock × machines + machine) × 2 + mode
  std::int64_t sides = 1;  // that price steps count for each side of a copy, in a unit of all runs
};

struct Costs {
  std::vector<RunCosts> runs;
  std::vector<bool> prints_one_side; // by stock
  std::vector<bool> turns_none;      // by machine: it cannot print the other side
  std::vector<Steps> steps;          // machine × 2 + mode
  std::vector<Nano> work_on_sheet, work_on_side;
  std::size_t stocks() const { return prints_one_side.size(); }
  std::size_t machines() const { return turns_none.size(); }
  std::size_t of_side(int stock, int machine, Mode mode) const {
    return (static_cast<std::size_t>(stock) * machines() + static_cast<std::size_t>(machine)) * 2 +
           static_cast<std::size_t>(mode);
  }
};

// The price of sides of one machine and mode where all runs have so many of them.
struct PriceStep {
  std::int64_t fewest = 0, most = 0; // as RunCosts::sides counts them
  std::vector<Nano> side;            // by run
  Nano beside = 0;                   // what the sides of pieces cost more than at the least price
};

// What one sheet is in an order.
struct SheetSide {
  int machine = unasked; // asked by a page of it, until the sheet is settled
  bool printed = false;
  Mode mode = Mode::black;
  bool numbered = false;
  std::uint32_t works = 0;
  auto operator<=>(const SheetSide &) const = default;
};
struct SheetInRun {
  int stock = unasked;
  std::array<SheetSide, 2> sides;
  auto operator<=>(const SheetInRun &) const = default;
};
struct SheetUse {
  std::vector<SheetInRun> runs;
  AlikeRuns alike; // made once for each set of these
  auto operator<=>(const SheetUse &) const = default;
};

struct Task {
  std::vector<PageKind> kinds;
  std::vector<MovingBlock> blocks;     // in order of pages, all of them together every page
  std::vector<PagePlaceInBook> places; // by page number; 0 is unused
  std::vector<SheetDefaults> sheets;
  Costs costs;
  Nano beside = 0;      // what no order changes
  Nano sides_least = 0; // what the sides of any order come to, whatever their prices
  // Machine × 2 + mode: the steps that a run may reach, where there are several of them.
  std::vector<std::vector<PriceStep>> price_steps;
  bool in_whole_nanos = true; // no price above is rounded down
  // Whether an order's cost hangs on which sides share a sheet, and not on counts alone.
  bool sheets_matter = false;
  int pages() const { return static_cast<int>(places.size()) - 1; }
  SheetUse empty_sheet() const { return {std::vector<SheetInRun>(costs.runs.size()), {}}; }
};

// Adds a page to a sheet; false where it asks for another paper or machine than the pages there.
bool add_page(SheetUse &use, const PageKind &page, int side);
// Fills in the sheet's own paper and machines; false where it cannot be printed so.
bool settle(SheetUse &use, const SheetDefaults &defaults, const Costs &costs);
Nano cost_of(const SheetUse &settled, const Costs &costs);

// The sheets of an order (order[p] is the page as written that becomes page p, order[0] unused);
// empty where it cannot be printed so.
std::vector<SheetUse> sheets_of(const Task &task, const std::vector<int> &order);

} // namespace bodkin::arranging
