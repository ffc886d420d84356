#include "money/arranging_wide.hpp"

#include "money/arranging_alone.hpp"
#include "money/arranging_following.hpp"
#include "money/arranging_steps.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace bodkin::arranging {
namespace {

constexpr Nano dear = std::numeric_limits<Nano>::max() / 4;

class WideSearch {
public:
  WideSearch(const Task &task, OrderSpace &space, const FullCost &full_cost, const Effort &effort)
      : task_(task), space_(space), full_cost_(full_cost), effort_(effort),
        easier_(task, space, effort) {}

  std::optional<Arranged> search() {
    std::vector<int> written(task_.places.size());
    std::iota(written.begin(), written.end(), 0);
    if (!sheets_of(task_, written).empty())
      take(written);
    std::vector<Choice> choices = choices_of(task_);
    for (Choice &choice : choices)
      look(choice);
    std::ranges::stable_sort(choices, {}, &Choice::bound);
    for (Choice &choice : choices)
      answer(choice);
    space_.price_by(task_.costs);
    if (!best_)
      return best_;
    Nano bound = best_->cost;
    for (const Choice &choice : choices)
      if (!choice.settled)
        bound = std::min(bound, choice.bound);
    best_->bound = bound;
    best_->proved = best_->cost <= bound + no_money;
    return best_;
  }

private:
  Nano most() const { return best_ ? best_->cost + no_money : dear; }
  bool open(const Choice &choice) const { return !choice.settled && choice.bound <= most(); }

  void take(std::vector<int> order) {
    Arranged found = with_cost(std::move(order), full_cost_);
    if (best_)
      take_better(*best_, std::move(found));
    else
      best_ = std::move(found);
  }

  void look(Choice &choice) { choice.bound = std::max(choice.bound, easier_.bound(choice)); }

  void answer(Choice &choice) {
    if (!open(choice))
      return;
    easier_.tighten(choice);
    if (open(choice) && space_.countable())
      walk(choice);
    if (open(choice))
      easier_.bound_within(choice, most());
  }

  // Of sides alone, and only where they have one price on all papers.
  static Choice counted(Choice choice) {
    choice.task.sheets_matter = false;
    for (Steps &steps : choice.task.costs.steps)
      if (steps == Steps::by_paper)
        steps = Steps::none;
    return choice;
  }

  void walk(Choice &choice) {
    const Costs eased = choice.eased_costs();
    space_.price_by(eased);
    const auto rest = [&](std::size_t at, const Node &node) { return easier_.rest(at, node); };
    FollowingBounds bounds;
    bounds.most = most();
    bounds.at_each = effort_.wide_nodes;
    const Following following(counted(choice), space_, rest, bounds);
    std::size_t priced = 0;
    for (const Follower &last : following.arrived()) {
      if (last.real > most() || ++priced > effort_.priced)
        break;
      take(following.order_of(last));
    }
    choice.settled = following.all_followed() && priced <= effort_.priced;
  }

  const Task &task_;
  OrderSpace &space_;
  const FullCost &full_cost_;
  const Effort &effort_;
  EasierQuestions easier_;
  std::optional<Arranged> best_;
};

} // namespace

std::optional<Arranged> walk_wide(const Task &task, OrderSpace &space, const FullCost &full_cost,
                                  const Effort &effort) {
  return WideSearch(task, space, full_cost, effort).search();
}

} // namespace bodkin::arranging
