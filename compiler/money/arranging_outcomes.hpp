// Outcomes of orders, where lower prices alone do not settle which is the cheapest: how many sides
// are printed how on which paper is all that the estimate sees of an order.
#pragma once

#include "money/arranging_space.hpp"

#include <map>

namespace bodkin::arranging {

// How many sides of each machine × 2 + mode there may be, as RunCosts::sides counts them.
struct SideLimits {
  std::int64_t fewest = 0, most = 0;
};

// Counts of what bends the price, each outcome known by a number: sides whose price has steps. All
// else costs the same wherever it lies, and of two walks that agree here the cheaper is kept. Where
// it matters which sides lie back to back the whole use of each sheet is counted. Within limits
// nothing is counted beyond what they ask for.
class Outcomes {
public:
  Outcomes(const Task &task, const OrderSpace &space, std::vector<SideLimits> limits);
  // With a sheet of that use more.
  std::uint32_t with(std::uint32_t outcome, std::uint32_t use);
  bool too_many(std::uint32_t outcome) const;
  bool enough(std::uint32_t outcome) const;

private:
  using Counts = std::vector<std::int64_t>;
  void count_sheet(Counts &counts, std::uint32_t use);
  void count(Counts &counts, const SheetUse &use) const;
  void count(Counts &counts, int stock, const SheetSide &side, std::int64_t sides) const;

  const Task &task_;
  const OrderSpace &space_;
  std::vector<SideLimits> limits_;
  std::vector<Counts> counts_;
  std::map<Counts, std::uint32_t> ids_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> next_;
  std::map<std::uint32_t, std::size_t> slots_;
};

} // namespace bodkin::arranging
