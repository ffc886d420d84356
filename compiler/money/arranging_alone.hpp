// Two easier questions than that of an order of pages, each answered exactly: its sides alone, as
// if paper were free and any page might lie on any, and its papers alone, as if nothing were
// printed. Their answers together are never above what an order costs.
#pragma once

#include "money/arranging_choices.hpp"
#include "money/arranging_search.hpp"

#include <memory>
#include <optional>

namespace bodkin::arranging {

enum class Only { sides, papers };

class Alone {
public:
  Alone(const Task &task, OrderSpace &space, Only only, const Effort &effort);
  Alone(const Alone &) = delete;
  Alone &operator=(const Alone &) = delete;

  // False where even this has too many nodes; then it costs nothing.
  bool answered() const { return layers_->whole(); }
  // By other prices of the whole question.
  void price_by(const Costs &costs);
  Nano from_start() const; // Rest::no_way where there is none
  // From a node of the whole question on; only of a space that can be counted.
  Nano rest(std::size_t at, const Node &node);
  // Of one cheapest order by the prices now, as limits count them.
  std::vector<std::int64_t> counts() const;
  // What the choice's orders cost at the least, its limits kept, at its prices as they are eased
  // now; more than `most` where none costs so little, nothing where there is too much to look at.
  std::optional<Nano> least_within(const Choice &choice, Nano most);

private:
  Task eased(const Task &task);
  void match_groups();
  std::uint32_t use_of(std::uint32_t id);
  std::uint32_t taken_of(std::uint32_t id);

  Only only_;
  OrderSpace &space_;
  const Effort &effort_;
  std::vector<int> kinds_; // by kind of the whole question
  Task task_;
  std::unique_ptr<OrderSpace> eased_space_;
  std::unique_ptr<Layers> layers_;
  std::vector<std::size_t> groups_;
  std::unordered_map<std::uint32_t, std::uint32_t> uses_, taken_;
};

// Both of them.
class EasierQuestions {
public:
  EasierQuestions(const Task &task, OrderSpace &space, const Effort &effort);
  // Of the choice at its prices as they are eased; no order of it costs less.
  Nano bound(const Choice &choice);
  Nano rest(std::size_t at, const Node &node);
  // Eases the choice's prices to where the bound is highest.
  void tighten(Choice &choice);
  // The sides' least with their numbers within the limits, which may lift the choice's bound, or
  // settle it where it is more than `most`.
  void bound_within(Choice &choice, Nano most);

private:
  const Task &task_;
  Alone sides_, papers_;
};

} // namespace bodkin::arranging
