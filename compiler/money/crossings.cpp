#include "money/crossings.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// The fewest copies from `from` to `last` where the challenger costs less than the leader.
std::optional<std::int64_t> overtakes(const Stretch &challenger, const Stretch &leader,
                                      std::int64_t from, std::int64_t last) {
  if (!challenger.offered)
    return std::nullopt;
  if (!leader.offered || challenger.at(from) < leader.at(from))
    return from;
  if (challenger.each >= leader.each)
    return std::nullopt;
  const Exact even = (challenger.at_none - leader.at_none) / (leader.each - challenger.each);
  const std::int64_t first = even.floor() + 1;
  return first <= last ? std::optional(first) : std::nullopt;
}

struct Race {
  const std::vector<Way> &ways;
  std::vector<Stretch> now{};
  std::size_t leader = 0;
  std::int64_t copies = 1;

  std::int64_t refresh() {
    std::int64_t last = longest_compared;
    now.resize(ways.size());
    for (std::size_t i = 0; i < ways.size(); ++i) {
      if (now[i].last < copies)
        now[i] = ways[i].at(copies);
      last = std::min(last, now[i].last);
    }
    return std::max(last, copies);
  }

  bool better(std::size_t way, std::size_t than, std::int64_t at) const {
    return now[way].offered && (!now[than].offered || now[way].at(at) < now[than].at(at));
  }

  void lead_at_one_copy() {
    for (std::size_t i = 1; i < ways.size(); ++i)
      if (better(i, leader, 1))
        leader = i;
  }

  std::optional<std::int64_t> next_overtaking(std::int64_t last) const {
    std::optional<std::int64_t> first;
    for (const Stretch &challenger : now)
      if (const auto copies_then = overtakes(challenger, now[leader], copies, first.value_or(last)))
        first = copies_then;
    return first;
  }

  std::size_t cheapest_at(std::int64_t at) const {
    std::size_t best = leader;
    for (std::size_t i = 0; i < ways.size(); ++i)
      if (better(i, best, at))
        best = i;
    return best;
  }
};

} // namespace

Comparison compare(const std::vector<Way> &ways) {
  if (ways.empty())
    return {};
  Race race{ways};
  race.refresh();
  race.lead_at_one_copy();
  Comparison out{ways[race.leader].name, {}};
  while (race.copies <= longest_compared) {
    const std::int64_t last = race.refresh();
    const auto overtaking = race.next_overtaking(last);
    if (!overtaking) {
      race.copies = last + 1;
      continue;
    }
    const std::size_t next = race.cheapest_at(*overtaking);
    out.crossings.push_back({*overtaking, ways[race.leader].name, ways[next].name});
    race.leader = next;
    race.copies = *overtaking;
  }
  return out;
}

std::optional<CheaperRun> cheaper_run(const Way &way, std::int64_t copies) {
  Stretch stretch = way.at(copies);
  if (!stretch.offered)
    return std::nullopt;
  // Within a stretch more copies never cost less, so only the beginnings of stretches can.
  Exact least = stretch.at(copies);
  std::optional<CheaperRun> best;
  while (stretch.last < longest_compared) {
    const std::int64_t first = stretch.last + 1;
    stretch = way.at(first);
    if (stretch.offered && stretch.at(first) <= least) {
      least = stretch.at(first);
      best = {first, least};
    }
  }
  return best;
}

} // namespace bodkin
