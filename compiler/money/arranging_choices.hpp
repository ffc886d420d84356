// Price steps: each choice of steps that the runs may reach is a question with one price for each
// kind of side, and with limits for how many there are. The limits are eased by a price on each
// side beyond or below them (Lagrange's multipliers: a lower bound for any price that is chosen, as
// any textbook of optimisation has it).
#pragma once

#include "money/arranging_layers.hpp"
#include "money/arranging_outcomes.hpp"

namespace bodkin::arranging {

struct Choice {
  Task task; // at the prices of the steps chosen
  std::vector<SideLimits> limits;
  std::vector<Nano> eased; // the price on each side, by machine × 2 + mode
  Nano bound = 0;
  bool settled = false; // nothing in it is cheaper than what is known

  // The prices as they are eased now, and what is paid beside them then.
  Costs eased_costs() const;
  Nano eased_beside() const;
};

// One where no prices have steps.
std::vector<Choice> choices_of(const Task &task);

// Sides of an order by machine × 2 + mode, as limits count them.
std::vector<std::int64_t> counts_of(const Task &task, const std::vector<int> &order);

// Prices on sides tried one after another, for each machine and mode whose count lies past its
// limits: where the costs of two orders, one with too few sides and one with too many, come to the
// same, else half way.
class Easing {
public:
  Easing(const Task &task, const Choice &choice);
  // From the cheapest order at the prices now, its counts and cost; false where they stay.
  bool ease(Choice &choice, const std::vector<std::int64_t> &counts, Nano cost);

private:
  // A price that was tried: what its order costs without it, and how many sides it is paid on.
  struct Tried {
    Nano price = 0;
    bool known = false;
    Nano without = 0;
    std::int64_t sides = 0;
  };
  static Nano between(const Tried &least, const Tried &most);
  std::vector<Tried> least_, most_;
};

} // namespace bodkin::arranging
