#include "money/arranging_space.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

namespace bodkin::arranging {
namespace {

constexpr std::uint32_t unknown = 0xfffffffe;

} // namespace

OrderSpace::OrderSpace(const Task &task)
    : task_(task), costs_(&task.costs), fixed_(task.places.size(), -1),
      written_group_(task.places.size(), -1), rank_(task.places.size()) {
  id_of_use(task.empty_sheet());
  id_of_taken({});
  gather_groups();
  for (int place = 1; place <= task.pages(); ++place)
    sequence_.push_back(place);
  std::ranges::sort(sequence_, {}, [&](int place) {
    const PagePlaceInBook &in_book = task_.places[static_cast<std::size_t>(place)];
    return std::tuple(in_book.sheet, in_book.side, place);
  });
  for (std::size_t at = 0; at < sequence_.size(); ++at)
    rank_[static_cast<std::size_t>(sequence_[at])] = at;
  lay_in_hand();
}

void OrderSpace::price_by(const Costs &costs) {
  costs_ = &costs;
  settled_.clear();
}

void OrderSpace::gather_groups() {
  std::map<std::tuple<std::vector<int>, bool, bool>, std::size_t> known;
  for (const MovingBlock &block : task_.blocks) {
    if (block.stays) {
      std::ranges::copy(block.kinds, fixed_.begin() + block.first);
      continue;
    }
    const auto [entry, fresh] =
        known.emplace(std::tuple(block.kinds, block.from_left, block.from_right), groups_.size());
    if (fresh)
      groups_.push_back({block.kinds, block.from_left, block.from_right, {}, 1});
    groups_[entry->second].firsts.push_back(block.first);
    written_group_[static_cast<std::size_t>(block.first)] = static_cast<int>(entry->second);
  }
}

void OrderSpace::lay_in_hand() {
  std::uint64_t radix = 1;
  for (Group &group : groups_) {
    group.radix = radix;
    const std::uint64_t count = group.firsts.size();
    if (radix > std::numeric_limits<std::uint64_t>::max() / (count + 1) / 2) {
      countable_ = false;
      return;
    }
    start_.in_hand += count * radix;
    radix *= count + 1;
  }
}

std::uint32_t OrderSpace::id_of_use(const SheetUse &use) {
  const auto [entry, fresh] = use_ids_.emplace(use, static_cast<std::uint32_t>(uses_.size()));
  if (fresh) {
    uses_.push_back(use);
    with_page_.emplace_back(task_.kinds.size() * 2, unknown);
  }
  return entry->second;
}

std::uint32_t OrderSpace::id_of_taken(const Taken &taken) {
  const auto [entry, fresh] =
      taken_ids_.emplace(taken, static_cast<std::uint32_t>(takings_.size()));
  if (fresh)
    takings_.push_back(taken);
  return entry->second;
}

std::uint32_t OrderSpace::with_page(std::uint32_t use, int kind, int side) {
  const auto slot = static_cast<std::size_t>(kind) * 2 + static_cast<std::size_t>(side);
  if (with_page_[use][slot] == unknown) {
    SheetUse more = uses_[use];
    const bool goes = add_page(more, task_.kinds[static_cast<std::size_t>(kind)], side);
    const std::uint32_t id = goes ? id_of_use(more) : impossible;
    with_page_[use][slot] = id;
  }
  return with_page_[use][slot];
}

std::pair<std::uint32_t, Nano> OrderSpace::settled(std::uint32_t use, int sheet) {
  const auto known = settled_.find({use, sheet});
  if (known != settled_.end())
    return known->second;
  SheetUse whole = uses_[use];
  const bool goes = settle(whole, task_.sheets[static_cast<std::size_t>(sheet)], *costs_);
  const std::pair<std::uint32_t, Nano> outcome =
      goes ? std::pair(id_of_use(whole), cost_of(whole, *costs_)) : std::pair(impossible, Nano{});
  settled_.emplace(std::pair(use, sheet), outcome);
  return outcome;
}

bool OrderSpace::fits(const Group &group, int first, int here, const Taken &taken) const {
  const int length = static_cast<int>(group.kinds.size());
  if (first < 1 || first + length - 1 > task_.pages())
    return false;
  if ((group.from_left && first % 2 != 0) || (group.from_right && first % 2 == 0))
    return false;
  for (int i = 0; i < length; ++i) {
    const auto place = static_cast<std::size_t>(first) + static_cast<std::size_t>(i);
    const auto kind = static_cast<std::size_t>(group.kinds[static_cast<std::size_t>(i)]);
    if (task_.places[place].shape != task_.kinds[kind].shape || fixed_[place] >= 0)
      return false;
    if (first + i == here)
      continue;
    if (rank_[place] < rank_[static_cast<std::size_t>(here)] ||
        std::ranges::any_of(taken, [&](const auto &t) { return t.first == first + i; }))
      return false;
  }
  return true;
}

void OrderSpace::lay(std::size_t at, const Node &node, int kind, Step step,
                     std::vector<Step> &found) {
  const PagePlaceInBook &place = task_.places[static_cast<std::size_t>(sequence_[at])];
  step.next.use = with_page(node.use, kind, place.side);
  if (step.next.use == impossible)
    return;
  const bool last = at + 1 == sequence_.size() ||
                    task_.places[static_cast<std::size_t>(sequence_[at + 1])].sheet != place.sheet;
  if (last) {
    const auto [use, cost] = settled(step.next.use, place.sheet);
    if (use == impossible)
      return;
    step.next.use = 0;
    step.ended = use;
    step.cost = cost;
  }
  found.push_back(step);
}

void OrderSpace::steps(std::size_t at, const Node &node, std::vector<Step> &found) {
  found.clear();
  const int here = sequence_[at];
  Step step;
  step.next = node;
  if (fixed_[static_cast<std::size_t>(here)] >= 0)
    return lay(at, node, fixed_[static_cast<std::size_t>(here)], step, found);
  const Taken taken = takings_[node.taken];
  const auto claim = std::ranges::find(taken, here, &std::pair<int, int>::first);
  if (claim != taken.end()) {
    Taken rest = taken;
    rest.erase(rest.begin() + (claim - taken.begin()));
    step.next.taken = id_of_taken(rest);
    return lay(at, node, claim->second, step, found);
  }
  for (std::size_t g = 0; g < groups_.size(); ++g) {
    const Group &group = groups_[g];
    if (node.in_hand / group.radix % (group.firsts.size() + 1) == 0)
      continue;
    step.next.in_hand = node.in_hand - group.radix;
    step.group = static_cast<int>(g);
    for (std::size_t i = 0; i < group.kinds.size(); ++i) {
      step.first = here - static_cast<int>(i);
      if (!fits(group, step.first, here, taken))
        continue;
      const int length = static_cast<int>(group.kinds.size());
      step.moves = written_group_[static_cast<std::size_t>(step.first)] == step.group ? 0 : length;
      step.next.taken = node.taken;
      if (length > 1) {
        Taken more = taken;
        for (int j = 0; j < length; ++j)
          if (step.first + j != here)
            more.emplace_back(step.first + j, group.kinds[static_cast<std::size_t>(j)]);
        std::ranges::sort(more);
        step.next.taken = id_of_taken(more);
      }
      lay(at, node, group.kinds[i], step, found);
    }
  }
}

std::vector<int> OrderSpace::order_of(const std::vector<Laying> &layings) const {
  std::vector<int> order(task_.places.size());
  for (std::size_t place = 1; place < order.size(); ++place)
    order[place] = static_cast<int>(place);
  std::vector<std::vector<int>> free(groups_.size());
  for (std::size_t g = 0; g < groups_.size(); ++g)
    free[g] = groups_[g].firsts;
  std::vector<Laying> away;
  for (const Laying &laying : layings) {
    if (written_group_[static_cast<std::size_t>(laying.first)] == laying.group)
      std::erase(free[static_cast<std::size_t>(laying.group)], laying.first);
    else
      away.push_back(laying);
  }
  std::ranges::sort(away, {}, &Laying::first);
  for (const Laying &laying : away) {
    std::vector<int> &firsts = free[static_cast<std::size_t>(laying.group)];
    const int from = firsts.front();
    firsts.erase(firsts.begin());
    for (std::size_t i = 0; i < groups_[static_cast<std::size_t>(laying.group)].kinds.size(); ++i)
      order[static_cast<std::size_t>(laying.first) + i] = from + static_cast<int>(i);
  }
  return order;
}

} // namespace bodkin::arranging
