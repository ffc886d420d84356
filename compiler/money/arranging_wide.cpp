#include "money/arranging_wide.hpp"

#include <algorithm>
#include <memory>

namespace bodkin::arranging {
namespace {

enum class Only { sides, papers };

PageInRun alone(const PageInRun &page, Only only) {
  PageInRun left;
  if (only == Only::papers) {
    left.stock = page.stock;
    return left;
  }
  left.draws = page.draws;
  left.mode = page.mode;
  left.machine = page.machine;
  return left;
}

PageKind alone(const PageKind &kind, Only only) {
  PageKind left;
  left.shape = kind.shape;
  for (const PageInRun &page : kind.runs)
    left.runs.push_back(alone(page, only));
  return left;
}

// The least price of each side on any paper.
void forget_papers(RunCosts &costs, std::size_t of_a_stock) {
  for (std::size_t i = 0; i < of_a_stock; ++i) {
    Nano least = costs.side[i];
    for (std::size_t j = i; j < costs.side.size(); j += of_a_stock)
      least = std::min(least, costs.side[j]);
    for (std::size_t j = i; j < costs.side.size(); j += of_a_stock)
      costs.side[j] = least;
  }
}

Costs alone(const Costs &costs, Only only) {
  Costs left = costs;
  left.work_on_sheet.clear();
  left.work_on_side.clear();
  std::fill(left.prints_one_side.begin(), left.prints_one_side.end(), false);
  std::fill(left.turns_none.begin(), left.turns_none.end(), false);
  for (RunCosts &run : left.runs)
    if (only == Only::papers) {
      std::ranges::fill(run.side, 0);
    } else {
      std::ranges::fill(run.sheet, 0);
      forget_papers(run, costs.machines() * 2);
    }
  return left;
}

// The easier question, and each node of the whole one as a node of it.
class Alone {
public:
  Alone(const Task &task, OrderSpace &space, Only only, std::size_t most)
      : only_(only), space_(space), task_(eased(task)),
        eased_space_(std::make_unique<OrderSpace>(task_)),
        layers_(std::make_unique<Layers>(*eased_space_, most)) {
    if (answered())
      match_groups();
  }

  bool answered() const { return layers_->whole(); }
  Nano from_start() const { return answered() ? layers_->from_start().cost : 0; }

  Nano rest(std::size_t at, const Node &node) {
    if (!answered())
      return 0;
    Node eased;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
      const Group &group = space_.groups()[g];
      eased.in_hand += node.in_hand / group.radix % (group.firsts.size() + 1) *
                       eased_space_->groups()[groups_[g]].radix;
    }
    eased.use = use_of(node.use);
    eased.taken = taken_of(node.taken);
    return layers_->rest(at, eased).cost;
  }

private:
  Task eased(const Task &task) {
    Task easier = task;
    easier.costs = alone(task.costs, only_);
    easier.kinds.clear();
    std::map<PageKind, int> known;
    for (const PageKind &kind : task.kinds) {
      const auto [entry, fresh] =
          known.emplace(alone(kind, only_), static_cast<int>(easier.kinds.size()));
      if (fresh)
        easier.kinds.push_back(entry->first);
      kinds_.push_back(entry->second);
    }
    for (MovingBlock &block : easier.blocks)
      for (int &kind : block.kinds)
        kind = kinds_[static_cast<std::size_t>(kind)];
    return easier;
  }

  void match_groups() {
    for (const Group &group : space_.groups()) {
      const auto same = std::ranges::find_if(eased_space_->groups(), [&](const Group &other) {
        return std::ranges::find(other.firsts, group.firsts.front()) != other.firsts.end();
      });
      groups_.push_back(static_cast<std::size_t>(same - eased_space_->groups().begin()));
    }
  }

  std::uint32_t use_of(std::uint32_t id) {
    const auto known = uses_.find(id);
    if (known != uses_.end())
      return known->second;
    SheetUse use = space_.use(id);
    use.differs = false;
    for (SheetInRun &sheet : use.runs) {
      if (only_ == Only::sides)
        sheet.stock = unasked;
      else
        sheet.sides = {};
      for (SheetSide &side : sheet.sides)
        side.works = 0, side.numbered = false;
    }
    return uses_.emplace(id, eased_space_->id_of_use(use)).first->second;
  }

  std::uint32_t taken_of(std::uint32_t id) {
    const auto known = taken_.find(id);
    if (known != taken_.end())
      return known->second;
    std::vector<std::pair<int, int>> taken = space_.taken(id);
    for (auto &[place, kind] : taken)
      kind = kinds_[static_cast<std::size_t>(kind)];
    return taken_.emplace(id, eased_space_->id_of_taken(taken)).first->second;
  }

  Only only_;
  OrderSpace &space_;
  std::vector<int> kinds_; // by kind of the whole question
  Task task_;
  std::unique_ptr<OrderSpace> eased_space_;
  std::unique_ptr<Layers> layers_;
  std::vector<std::size_t> groups_;
  std::unordered_map<std::uint32_t, std::uint32_t> uses_, taken_;
};

struct Follower {
  Node node;
  Nano cost = 0, bound = 0;
  int moves = 0;
  std::uint32_t before = 0;
  Laying laying{-1, 0};
};

bool better(const Follower &a, const Follower &b) {
  return std::pair(a.cost, a.moves) < std::pair(b.cost, b.moves);
}

struct Following {
  OrderSpace &space;
  std::array<Alone *, 2> questions;
  Nano most = 0;
  std::size_t most_nodes = 0;
  bool all_followed = true;

  Nano bound(std::size_t at, const Node &node, Nano cost) const {
    for (Alone *question : questions) {
      const Nano rest = question->rest(at, node);
      if (rest == Rest::no_way)
        return Rest::no_way;
      cost += rest;
    }
    return cost;
  }

  std::vector<Follower> next_of(std::size_t at, const std::vector<Follower> &from) {
    std::vector<Follower> next;
    std::unordered_map<Node, std::uint32_t, NodeHash> index;
    std::vector<Step> steps;
    for (std::uint32_t i = 0; i < from.size(); ++i) {
      space.steps(at, from[i].node, steps);
      for (const Step &step : steps) {
        Follower follower{step.next, from[i].cost + step.cost, 0, from[i].moves + step.moves,
                          i,         {step.group, step.first}};
        const auto [entry, fresh] =
            index.emplace(step.next, static_cast<std::uint32_t>(next.size()));
        if (!fresh) {
          Follower &known = next[entry->second];
          follower.bound =
              known.bound == Rest::no_way ? known.bound : known.bound - known.cost + follower.cost;
          if (better(follower, known))
            known = follower;
          continue;
        }
        follower.bound = bound(at + 1, step.next, follower.cost);
        next.push_back(follower);
      }
    }
    std::erase_if(next, [&](const Follower &f) { return f.bound > most; });
    if (next.size() > most_nodes) {
      all_followed = false;
      std::ranges::nth_element(next, next.begin() + static_cast<std::ptrdiff_t>(most_nodes), {},
                               [](const Follower &f) { return std::pair(f.bound, f.moves); });
      next.resize(most_nodes);
    }
    return next;
  }
};

std::vector<Laying> layings_to(const std::vector<std::vector<Follower>> &layers,
                               const Follower &last) {
  std::vector<Laying> layings;
  const Follower *follower = &last;
  for (std::size_t at = layers.size(); at-- > 1;) {
    if (follower->laying.group >= 0)
      layings.push_back(follower->laying);
    follower = &layers[at - 1][follower->before];
  }
  return layings;
}

} // namespace

WideWalk walk_wide(const Task &task, OrderSpace &space, Nano most, const Effort &effort) {
  WideWalk walk;
  if (!space.countable())
    return walk;
  Alone sides(task, space, Only::sides, effort.nodes),
      papers(task, space, Only::papers, effort.nodes);
  walk.bound = task.beside + sides.from_start() + papers.from_start();
  Following following{space, {&sides, &papers}, most, effort.wide_nodes, true};
  std::vector<std::vector<Follower>> layers{
      {Follower{space.start(), task.beside, walk.bound, 0, 0, {-1, 0}}}};
  for (std::size_t at = 0; at < space.places(); ++at)
    layers.push_back(following.next_of(at, layers.back()));
  walk.all_followed = following.all_followed;
  if (layers.back().empty())
    return walk;
  const Follower &best = *std::ranges::min_element(layers.back(), better);
  walk.arrived = true;
  walk.cost = best.cost;
  walk.layings = layings_to(layers, best);
  return walk;
}

} // namespace bodkin::arranging
