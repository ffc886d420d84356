// A plan's stretches gathered into turns that somebody at a table can follow.
#include "paperwork/evening.hpp"

#include <algorithm>
#include <span>

namespace bodkin::paperwork {
namespace {

using Stretches = std::span<const Stretch>;

// Whoever follows the plan stands still nowhere within a turn.
bool without_waiting(Stretches of) {
  return std::adjacent_find(of.begin(), of.end(), [](const Stretch &one, const Stretch &next) {
           return next.begin != one.end;
         }) == of.end();
}

// Steps on one batch, each after the one before.
bool is_round(Stretches of) {
  return std::all_of(of.begin(), of.end(),
                     [](const Stretch &stretch) { return stretch.copies > 0; }) &&
         std::adjacent_find(of.begin(), of.end(), [](const Stretch &one, const Stretch &next) {
           return next.task <= one.task;
         }) == of.end();
}

bool same_steps(Stretches one, Stretches other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                    [](const Stretch &a, const Stretch &b) { return a.task == b.task; });
}

// How many rounds of so many steps follow each other from the beginning.
std::size_t rounds_of(Stretches of, std::size_t steps) {
  std::size_t rounds = 0;
  for (; (rounds + 1) * steps <= of.size(); ++rounds) {
    const Stretches round = of.subspan(rounds * steps, steps);
    if (!is_round(round) || !same_steps(round, of.first(steps)) ||
        !without_waiting(of.first((rounds + 1) * steps)))
      break;
  }
  return rounds;
}

Turn turn_of(Stretches of, std::size_t steps) {
  Turn turn{{},
            of.front().begin,
            of.back().end,
            0,
            of.front().copies,
            of.front().from_batch,
            of.back().to_batch};
  for (std::size_t i = 0; i < steps; ++i)
    turn.tasks.push_back(of[i].task);
  for (std::size_t i = 0; i < of.size(); i += steps)
    turn.copies += of[i].copies;
  const bool alike = std::all_of(of.begin(), of.end(), [&](const Stretch &stretch) {
    return stretch.copies == of.front().copies;
  });
  if (!alike || of.size() == steps)
    turn.at_once = 0;
  return turn;
}

} // namespace

namespace {

// Steps on one batch of several, with nothing between them: as many as follow each other.
std::size_t steps_on_a_batch(Stretches of, std::int64_t all) {
  std::size_t steps = 1;
  while (steps < of.size() && of[steps].copies == of[0].copies && of[0].copies < all &&
         of[steps].begin == of[steps - 1].end && is_round(of.first(steps + 1)))
    ++steps;
  return steps;
}

} // namespace

std::vector<Turn> turns_of(const Evening &evening, int hand) {
  std::vector<Stretch> own;
  std::copy_if(evening.stretches.begin(), evening.stretches.end(), std::back_inserter(own),
               [&](const Stretch &stretch) { return stretch.hand == hand; });
  std::int64_t all = 0;
  for (const Stretch &stretch : evening.stretches)
    all = std::max(all, stretch.copies);
  std::vector<Turn> turns;
  for (Stretches left(own); !left.empty();) {
    std::size_t steps = 1, taken = 1;
    for (std::size_t of = 2; 2 * of <= left.size(); ++of)
      if (const std::size_t rounds = rounds_of(left, of); rounds > 1 && rounds * of > taken) {
        steps = of;
        taken = rounds * of;
      }
    if (taken == 1)
      steps = taken = steps_on_a_batch(left, all);
    turns.push_back(turn_of(left.first(taken), steps));
    left = left.subspan(taken);
  }
  return turns;
}

} // namespace bodkin::paperwork
