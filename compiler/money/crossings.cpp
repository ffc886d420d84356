#include "money/crossings.hpp"

#include <algorithm>
#include <numeric>

namespace bodkin {
namespace {

// Beyond this the pattern of whole sheets is never waited for: no sheet has so many cut out of it.
constexpr std::int64_t longest_pattern = 1'000'000;

// After so many copies what is rounded up begins anew in both.
std::int64_t pattern(const Stretch &a, const Stretch &b) {
  std::int64_t copies = 1;
  for (const Stretch *stretch : {&a, &b})
    for (const RoundedUp &sheets : stretch->rounded)
      if (copies < longest_pattern)
        copies = std::lcm(copies, sheets.each.denominator());
  return std::min(copies, longest_pattern);
}

// The lines of both, rounding left out, are this far apart; `slope` a copy.
struct Apart {
  Exact at_none, slope;
  Exact at(std::int64_t copies) const { return at_none + slope * Exact(copies); }
};

// Where the lines lie so near that whole sheets may settle it: every run is asked.
std::optional<std::int64_t> by_asking(const Stretch &challenger, const Stretch &leader,
                                      std::int64_t from, std::int64_t last) {
  for (std::int64_t copies = from; copies <= last; ++copies)
    if (challenger.at(copies) < leader.at(copies))
      return copies;
  return std::nullopt;
}

// The fewest copies from `from` on where a falling line lies below `level`.
std::int64_t falls_below(const Apart &apart, const Exact &level, std::int64_t from) {
  if (apart.at(from) < level)
    return from;
  return ((level - apart.at_none) / apart.slope).floor() + 1;
}

// The fewest copies from `from` to `last` where the challenger costs less than the leader. What is
// rounded up to whole sheets never comes to more than most_unused(), so it matters only where the
// lines lie that near.
std::optional<std::int64_t> overtakes(const Stretch &challenger, const Stretch &leader,
                                      std::int64_t from, std::int64_t last) {
  if (!challenger.offered)
    return std::nullopt;
  if (!leader.offered || challenger.at(from) < leader.at(from))
    return from;
  const Apart apart{challenger.at_none - leader.at_none, challenger.each - leader.each};
  const Exact nothing, possible = leader.most_unused(), sure = nothing - challenger.most_unused();
  if (apart.slope > nothing) {
    const Exact until = (possible - apart.at_none) / apart.slope;
    return by_asking(challenger, leader, from, std::min(last, until.ceiling()));
  }
  if (apart.slope.is_zero()) {
    if (apart.at_none >= possible)
      return std::nullopt;
    return by_asking(challenger, leader, from, std::min(last, from + pattern(challenger, leader)));
  }
  const std::int64_t begin = falls_below(apart, possible, from);
  return begin > last ? std::nullopt
                      : by_asking(challenger, leader, begin,
                                  std::min(last, falls_below(apart, sure, begin)));
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

  void lead_from_here() {
    for (std::size_t i = 1; i < ways.size(); ++i)
      if (better(i, leader, copies))
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

Comparison compare(const std::vector<Way> &ways, std::int64_t from) {
  if (ways.empty())
    return {};
  Race race{.ways = ways, .copies = from};
  race.refresh();
  race.lead_from_here();
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
