#include "money/arranging_outcomes.hpp"

#include <algorithm>
#include <utility>

namespace bodkin::arranging {
Outcomes::Outcomes(const Task &task, const OrderSpace &space, std::vector<SideLimits> limits)
    : task_(task), space_(space), limits_(std::move(limits)) {
  const std::size_t sides = task.costs.stocks() * task.costs.machines() * 2;
  counts_.emplace_back(task.sheets_matter ? 0 : sides);
  ids_.emplace(counts_.front(), 0);
}

std::uint32_t Outcomes::with(std::uint32_t outcome, std::uint32_t use) {
  const auto known = next_.find({outcome, use});
  if (known != next_.end())
    return known->second;
  Counts more = counts_[outcome];
  if (task_.sheets_matter)
    count_sheet(more, use);
  else
    count(more, space_.use(use));
  for (std::size_t priced = 0; priced < limits_.size(); ++priced)
    if (limits_[priced].most == no_limit)
      more[priced] = std::min(more[priced], limits_[priced].fewest);
  const auto [entry, fresh] = ids_.emplace(more, static_cast<std::uint32_t>(counts_.size()));
  if (fresh)
    counts_.push_back(std::move(more));
  next_.emplace(std::pair(outcome, use), entry->second);
  return entry->second;
}

bool Outcomes::too_many(std::uint32_t outcome) const {
  for (std::size_t priced = 0; priced < limits_.size(); ++priced)
    if (counts_[outcome][priced] > limits_[priced].most)
      return true;
  return false;
}

bool Outcomes::enough(std::uint32_t outcome) const {
  for (std::size_t priced = 0; priced < limits_.size(); ++priced)
    if (counts_[outcome][priced] < limits_[priced].fewest)
      return false;
  return true;
}

// By the sheet's whole use, where it matters which sides lie back to back.
void Outcomes::count_sheet(Counts &counts, std::uint32_t use) {
  const auto slot = slots_.emplace(use, slots_.size()).first->second;
  if (counts.size() <= slot)
    counts.resize(slot + 1);
  ++counts[slot];
}

void Outcomes::count(Counts &counts, const SheetUse &use) const {
  for (std::size_t run = 0; run < use.runs.size(); ++run)
    for (const SheetSide &side : use.runs[run].sides)
      if (side.printed)
        count(counts, use.runs[run].stock, side, task_.costs.runs[run].sides);
}

void Outcomes::count(Counts &counts, int stock, const SheetSide &side, std::int64_t sides) const {
  const std::size_t priced =
      static_cast<std::size_t>(side.machine) * 2 + static_cast<std::size_t>(side.mode);
  const Steps steps = task_.costs.steps[priced];
  if (steps == Steps::by_mode)
    counts[priced] += sides;
  else if (steps == Steps::by_paper)
    counts[static_cast<std::size_t>(stock) * task_.costs.machines() * 2 + priced] += sides;
}

} // namespace bodkin::arranging
