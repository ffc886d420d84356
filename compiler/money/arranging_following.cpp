#include "money/arranging_following.hpp"

#include <algorithm>
#include <utility>

namespace bodkin::arranging {
namespace {

bool better(const Follower &a, const Follower &b) {
  return std::pair(a.real, a.moves) < std::pair(b.real, b.moves);
}

Nano with_rest(Nano cost, Nano rest) { return rest == Rest::no_way ? rest : cost + rest; }

} // namespace

Following::Following(const Choice &choice, OrderSpace &space, LeastRest rest,
                     const FollowingBounds &bounds)
    : choice_(choice), space_(space), rest_(std::move(rest)), bounds_(bounds),
      outcomes_(choice_.task, space, choice.limits) {
  Follower first;
  first.node = space.start();
  first.cost = choice.eased_beside();
  first.real = choice.task.beside;
  layers_.push_back({first});
  follow();
  std::ranges::stable_sort(layers_.back(), better);
}

void Following::follow() {
  std::size_t kept = 1;
  for (std::size_t at = 0; at < space_.places(); ++at) {
    layers_.push_back(next_of(at, layers_.back()));
    kept += layers_.back().size();
    if (kept > bounds_.in_all) {
      all_followed_ = false;
      layers_.back().clear();
      return;
    }
  }
}

std::vector<Follower> Following::next_of(std::size_t at, const std::vector<Follower> &from) {
  std::vector<Follower> next;
  Index index;
  std::vector<Step> steps;
  for (std::uint32_t i = 0; i < from.size(); ++i) {
    space_.steps(at, from[i].node, steps);
    for (const Step &step : steps) {
      Follower follower = from[i];
      follower.node = step.next;
      follower.cost += step.cost;
      follower.real += step.cost;
      follower.moves += step.moves;
      follower.before = i;
      follower.laying = {step.group, step.first};
      if (step.ended != 0) {
        follower.real -= eased_on(step.ended);
        follower.outcome = outcomes_.with(follower.outcome, step.ended);
        if (outcomes_.too_many(follower.outcome) ||
            (at + 1 == space_.places() && !outcomes_.enough(follower.outcome)))
          continue;
      }
      take(at, follower, next, index);
    }
  }
  std::erase_if(next, [&](const Follower &f) { return f.bound > bounds_.most; });
  keep_most(next);
  return next;
}

void Following::take(std::size_t at, Follower &follower, std::vector<Follower> &next,
                     Index &index) const {
  const auto [entry, fresh] = index.emplace(NodeOutcome{follower.node, follower.outcome},
                                            static_cast<std::uint32_t>(next.size()));
  if (fresh) {
    follower.bound = with_rest(follower.cost, rest_(at + 1, follower.node));
    next.push_back(follower);
    return;
  }
  Follower &known = next[entry->second];
  if (!better(follower, known))
    return;
  follower.bound =
      known.bound == Rest::no_way ? known.bound : known.bound - known.cost + follower.cost;
  known = follower;
}

// What easing has added to the price of a sheet.
Nano Following::eased_on(std::uint32_t use) {
  const auto [entry, fresh] = eased_on_.try_emplace(use, 0);
  if (!fresh)
    return entry->second;
  const SheetUse &sheet = space_.use(use);
  for (std::size_t run = 0; run < sheet.runs.size(); ++run)
    for (const SheetSide &side : sheet.runs[run].sides)
      if (side.printed)
        entry->second += choice_.task.costs.runs[run].sides *
                         choice_.eased[static_cast<std::size_t>(side.machine) * 2 +
                                       static_cast<std::size_t>(side.mode)];
  return entry->second;
}

// Of those that promise as much some of every outcome: which of them arrive where they should is
// seen only at the end.
void Following::keep_most(std::vector<Follower> &next) {
  if (next.size() <= bounds_.at_each)
    return;
  all_followed_ = false;
  std::ranges::sort(next, {},
                    [](const Follower &f) { return std::tuple(f.bound, f.moves, f.real); });
  std::vector<std::pair<std::size_t, std::size_t>> ranked;
  std::unordered_map<std::uint32_t, std::size_t> of_outcome;
  for (std::size_t i = 0; i < next.size(); ++i)
    ranked.emplace_back(of_outcome[next[i].outcome]++, i);
  std::ranges::stable_sort(
      ranked, {}, [&](const auto &rank) { return std::pair(next[rank.second].bound, rank.first); });
  std::vector<Follower> kept;
  for (std::size_t i = 0; i < bounds_.at_each; ++i)
    kept.push_back(next[ranked[i].second]);
  next = std::move(kept);
}

std::vector<int> Following::order_of(const Follower &last) const {
  std::vector<Laying> layings;
  const Follower *follower = &last;
  for (std::size_t at = layers_.size(); at-- > 1;) {
    if (follower->laying.group >= 0)
      layings.push_back(follower->laying);
    follower = &layers_[at - 1][follower->before];
  }
  return space_.order_of(layings);
}

} // namespace bodkin::arranging
