#include "money/arranging_alone.hpp"

#include "money/arranging_following.hpp"

#include <algorithm>

namespace bodkin::arranging {
namespace {

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

} // namespace

Alone::Alone(const Task &task, OrderSpace &space, Only only, const Effort &effort)
    : only_(only), space_(space), effort_(effort), task_(eased(task)),
      eased_space_(std::make_unique<OrderSpace>(task_)),
      layers_(std::make_unique<Layers>(*eased_space_, effort.nodes)) {
  if (answered() && space_.countable())
    match_groups();
}

void Alone::price_by(const Costs &costs) {
  if (!answered())
    return;
  task_.costs = alone(costs, only_);
  eased_space_->price_by(task_.costs);
  layers_->look_back();
}

Nano Alone::from_start() const { return answered() ? layers_->from_start().cost : 0; }

std::vector<std::int64_t> Alone::counts() const {
  return counts_of(task_, eased_space_->order_of(layers_->best()));
}

std::optional<Nano> Alone::least_within(const Choice &choice, Nano most) {
  Choice alone_chosen = choice;
  alone_chosen.task = task_;
  alone_chosen.task.costs = alone(choice.task.costs, only_);
  const auto rest = [&](std::size_t at, const Node &node) { return layers_->rest(at, node).cost; };
  FollowingBounds bounds;
  bounds.most = most - alone_chosen.task.beside;
  bounds.in_all = effort_.outcomes;
  const Following following(alone_chosen, *eased_space_, rest, bounds);
  if (!following.all_followed())
    return std::nullopt;
  return following.arrived().empty() ? most + 1 : following.arrived().front().real;
}

Nano Alone::rest(std::size_t at, const Node &node) {
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

Task Alone::eased(const Task &task) {
  Task easier = task;
  easier.costs = alone(task.costs, only_);
  easier.sheets_matter = false;
  easier.beside = 0;
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

void Alone::match_groups() {
  for (const Group &group : space_.groups()) {
    const auto same = std::ranges::find_if(eased_space_->groups(), [&](const Group &other) {
      return std::ranges::find(other.firsts, group.firsts.front()) != other.firsts.end();
    });
    groups_.push_back(static_cast<std::size_t>(same - eased_space_->groups().begin()));
  }
}

std::uint32_t Alone::use_of(std::uint32_t id) {
  const auto known = uses_.find(id);
  if (known != uses_.end())
    return known->second;
  SheetUse use = space_.use(id);
  use.alike.clear();
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

std::uint32_t Alone::taken_of(std::uint32_t id) {
  const auto known = taken_.find(id);
  if (known != taken_.end())
    return known->second;
  std::vector<std::pair<int, int>> taken = space_.taken(id);
  for (auto &[place, kind] : taken)
    kind = kinds_[static_cast<std::size_t>(kind)];
  return taken_.emplace(id, eased_space_->id_of_taken(taken)).first->second;
}

EasierQuestions::EasierQuestions(const Task &task, OrderSpace &space, const Effort &effort)
    : task_(task), sides_(task, space, Only::sides, effort),
      papers_(task, space, Only::papers, effort) {}

Nano EasierQuestions::bound(const Choice &choice) {
  const Costs eased = choice.eased_costs();
  sides_.price_by(eased);
  papers_.price_by(eased);
  if (sides_.from_start() == Rest::no_way || papers_.from_start() == Rest::no_way)
    return Rest::no_way;
  const Nano sides = choice.eased_beside() - choice.task.beside + sides_.from_start();
  return choice.task.beside + std::max(sides, task_.sides_least) + papers_.from_start();
}

Nano EasierQuestions::rest(std::size_t at, const Node &node) {
  const Nano sides = sides_.rest(at, node), papers = papers_.rest(at, node);
  return sides == Rest::no_way || papers == Rest::no_way ? Rest::no_way : sides + papers;
}

void EasierQuestions::tighten(Choice &choice) {
  constexpr int most_tried = 30;
  Nano best_bound = bound(choice);
  if (!sides_.answered() || best_bound == Rest::no_way)
    return;
  Easing easing(task_, choice);
  std::vector<Nano> best = choice.eased;
  for (int i = 0; i < most_tried && easing.ease(choice, sides_.counts(), sides_.from_start()); ++i)
    if (const Nano tried = bound(choice); tried > best_bound)
      best_bound = tried, best = choice.eased;
  choice.eased = best;
  choice.bound = std::max(choice.bound, bound(choice));
}

void EasierQuestions::bound_within(Choice &choice, Nano most) {
  choice.bound = std::max(choice.bound, bound(choice));
  if (!sides_.answered() || choice.bound > most)
    return;
  const Nano beside = choice.task.beside + papers_.from_start();
  if (const std::optional<Nano> least = sides_.least_within(choice, most - beside)) {
    choice.bound = std::max(choice.bound, *least + beside);
    choice.settled = choice.bound > most;
  }
}

} // namespace bodkin::arranging
