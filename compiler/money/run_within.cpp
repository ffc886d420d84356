#include "money/run_within.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// What is rounded up to whole sheets lies above the straight line, at some runs more than at
// others; it is looked for no further than this from where the line meets the limit.
constexpr std::int64_t most_looks = 2'000;

// The fewest copies from `from` to `last` that cost at most the limit each: a + b·n <= L·n.
std::optional<std::int64_t> fewest(const Stretch &stretch, const Exact &limit, std::int64_t from,
                                   std::int64_t last) {
  if (!stretch.offered)
    return std::nullopt;
  if (stretch.each < limit)
    from = std::max(from, (stretch.at_none / (limit - stretch.each)).ceiling());
  for (std::int64_t copies = from; copies <= std::min(last, from + most_looks); ++copies) {
    if (stretch.at(copies) <= limit * Exact(copies))
      return copies;
    if (stretch.rounded.empty())
      break;
  }
  return std::nullopt;
}

// The most copies from `from` to `last` that cost no more than the limit in all; `from` does not.
std::int64_t most(const Stretch &stretch, const Exact &limit, std::int64_t from,
                  std::int64_t last) {
  std::int64_t copies = last;
  if (!stretch.each.is_zero())
    copies = std::min(last, ((limit - stretch.at_none) / stretch.each).floor());
  while (copies > from && stretch.at(copies) > limit)
    --copies;
  return copies;
}

std::optional<std::int64_t> longer(const Way &own, std::int64_t copies, const Exact &limit) {
  const std::int64_t longest = std::min(copies * 4, longest_compared);
  for (std::int64_t from = copies + 1; from <= longest;) {
    const Stretch stretch = own.at(from);
    const std::int64_t last = std::min(stretch.last, longest);
    if (const auto found = fewest(stretch, limit, from, last))
      return found;
    from = last + 1;
  }
  return std::nullopt;
}

std::optional<std::int64_t> shorter(const Way &own, std::int64_t copies, const Exact &limit) {
  std::optional<std::int64_t> found;
  for (std::int64_t from = 1; from < copies;) {
    const Stretch stretch = own.at(from);
    const std::int64_t last = std::min(stretch.last, copies - 1);
    if (stretch.offered && stretch.at(from) <= limit)
      found = most(stretch, limit, from, last);
    from = last + 1;
  }
  return found;
}

} // namespace

std::optional<std::int64_t> run_within(const Way &own, std::int64_t copies,
                                       const BudgetHeld &budget) {
  if (!budget.of_run)
    return longer(own, copies, budget.limit);
  const auto cheaper = cheaper_run(own, copies);
  if (cheaper && cheaper->total <= budget.limit)
    return cheaper->copies;
  return shorter(own, copies, budget.limit);
}

} // namespace bodkin
