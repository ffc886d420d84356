#include "money/arranging_outcomes.hpp"

#include <algorithm>

namespace bodkin::arranging {
namespace {

using Counts = std::vector<std::int64_t>;

// Counts of what bends the price, each outcome known by a number: sides whose price has steps. All
// else costs the same wherever it lies, and of two walks that agree here the cheaper is kept. Where
// blank sides are charged the whole use of each sheet is counted.
class Outcomes {
public:
  Outcomes(const Task &task, const OrderSpace &space) : task_(task), space_(space) {
    const std::size_t sides = task.costs.stocks() * task.costs.machines() * 2;
    counts_.emplace_back(task.sheets_matter ? 0 : sides);
    ids_.emplace(counts_.front(), 0);
  }

  std::uint32_t with(std::uint32_t outcome, std::uint32_t use) {
    const auto known = next_.find({outcome, use});
    if (known != next_.end())
      return known->second;
    Counts more = counts_[outcome];
    if (task_.sheets_matter)
      count_sheet(more, use);
    else
      count(more, space_.use(use));
    const auto [entry, fresh] = ids_.emplace(more, static_cast<std::uint32_t>(counts_.size()));
    if (fresh)
      counts_.push_back(std::move(more));
    next_.emplace(std::pair(outcome, use), entry->second);
    return entry->second;
  }

  bool within(std::uint32_t outcome, const std::vector<SideLimits> &limits, bool whole) const {
    const Counts &counts = counts_[outcome];
    for (std::size_t priced = 0; priced < limits.size(); ++priced)
      if (counts[priced] > limits[priced].most || (whole && counts[priced] < limits[priced].fewest))
        return false;
    return true;
  }

private:
  // By the sheet's whole use, where it matters which sides lie back to back.
  void count_sheet(Counts &counts, std::uint32_t use) {
    const auto slot = slots_.emplace(use, slots_.size()).first->second;
    if (counts.size() <= slot)
      counts.resize(slot + 1);
    ++counts[slot];
  }

  void count(Counts &counts, const SheetUse &use) const {
    for (std::size_t run = 0; run < use.runs.size(); ++run)
      for (const SheetSide &side : use.runs[run].sides)
        if (side.printed)
          count(counts, use.runs[run].stock, side, task_.costs.runs[run].sides);
  }

  void count(Counts &counts, int stock, const SheetSide &side, std::int64_t sides) const {
    const std::size_t priced =
        static_cast<std::size_t>(side.machine) * 2 + static_cast<std::size_t>(side.mode);
    const Steps steps = task_.costs.steps[priced];
    if (steps == Steps::by_mode)
      counts[priced] += sides;
    else if (steps == Steps::by_paper)
      counts[static_cast<std::size_t>(stock) * task_.costs.machines() * 2 + priced] += sides;
  }

  const Task &task_;
  const OrderSpace &space_;
  std::vector<Counts> counts_;
  std::map<Counts, std::uint32_t> ids_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> next_;
  std::map<std::uint32_t, std::size_t> slots_;
};

struct Walker {
  Node node;
  std::uint32_t outcome = 0;
  Nano cost = 0;
  int moves = 0;
  std::uint32_t before = 0; // index in the layer before
  Laying laying{-1, 0};
};

struct WalkerKey {
  Node node;
  std::uint32_t outcome = 0;
  bool operator==(const WalkerKey &) const = default;
};
struct WalkerHash {
  std::size_t operator()(const WalkerKey &key) const {
    return NodeHash{}(key.node) * 31 + key.outcome;
  }
};

class Weighing {
public:
  Weighing(const Task &task, OrderSpace &space, const Layers &layers, const Effort &effort,
           const std::vector<SideLimits> &limits)
      : task_(task), space_(space), layers_(layers), effort_(effort), limits_(limits),
        outcomes_(task, space) {}

  bool walk(Nano most) {
    walkers_.assign(1, {Walker{space_.start(), 0, task_.beside, 0, 0, {-1, 0}}});
    std::size_t kept = 1;
    for (std::size_t at = 0; at < space_.places(); ++at) {
      walk_on(at, most);
      kept += walkers_.back().size();
      if (kept > effort_.outcomes)
        return false;
    }
    std::ranges::stable_sort(walkers_.back(), {}, &Walker::cost);
    return true;
  }

  const std::vector<Walker> &arrived() const { return walkers_.back(); }

  std::vector<int> order_of(const Walker &last) const {
    std::vector<Laying> layings;
    const Walker *walker = &last;
    for (std::size_t at = walkers_.size(); at-- > 1;) {
      if (walker->laying.group >= 0)
        layings.push_back(walker->laying);
      walker = &walkers_[at - 1][walker->before];
    }
    return space_.order_of(layings);
  }

private:
  void walk_on(std::size_t at, Nano most) {
    std::vector<Walker> next;
    std::unordered_map<WalkerKey, std::uint32_t, WalkerHash> index;
    const std::vector<Walker> &from = walkers_.back();
    std::vector<Step> steps;
    for (std::uint32_t i = 0; i < from.size(); ++i) {
      space_.steps(at, from[i].node, steps);
      for (const Step &step : steps) {
        const Rest rest = layers_.rest(at + 1, step.next);
        const Nano cost = from[i].cost + step.cost;
        if (rest.cost == Rest::no_way || cost + rest.cost > most)
          continue;
        Walker walker{step.next, from[i].outcome,         cost, from[i].moves + step.moves,
                      i,         {step.group, step.first}};
        if (step.ended != 0)
          walker.outcome = outcomes_.with(walker.outcome, step.ended);
        if (step.ended != 0 &&
            !outcomes_.within(walker.outcome, limits_, at + 1 == space_.places()))
          continue;
        const auto [entry, fresh] = index.emplace(WalkerKey{walker.node, walker.outcome},
                                                  static_cast<std::uint32_t>(next.size()));
        if (fresh)
          next.push_back(walker);
        else if (std::pair(walker.cost, walker.moves) <
                 std::pair(next[entry->second].cost, next[entry->second].moves))
          next[entry->second] = walker;
      }
    }
    walkers_.push_back(std::move(next));
  }

  const Task &task_;
  OrderSpace &space_;
  const Layers &layers_;
  const Effort &effort_;
  const std::vector<SideLimits> &limits_;
  Outcomes outcomes_;
  std::vector<std::vector<Walker>> walkers_;
};

} // namespace

bool weigh_outcomes(const Task &task, OrderSpace &space, const Layers &layers,
                    const FullCost &full_cost, const Effort &effort, Arranged &best,
                    const std::vector<SideLimits> &limits) {
  Weighing weighing(task, space, layers, effort, limits);
  if (!weighing.walk(best.cost + no_money))
    return false;
  std::size_t priced = 0;
  for (const Walker &walker : weighing.arrived()) {
    if (walker.cost > best.cost + no_money)
      break;
    if (++priced > effort.priced)
      return false;
    const std::vector<int> order = weighing.order_of(walker);
    const Nano cost = full_cost(order);
    const bool cheaper = cost < best.cost - no_money;
    if (cheaper || (cost <= best.cost + no_money && walker.moves < best.moves))
      best = {order, cheaper ? cost : best.cost, walker.moves, best.bound, false, false};
  }
  return true;
}

} // namespace bodkin::arranging
