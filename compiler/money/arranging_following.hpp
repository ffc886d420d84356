// A walk of the places in which each node is told apart by the outcome so far: all of them that may
// cost no more than so much, or the most promising where there are too many.
#pragma once

#include "money/arranging_choices.hpp"
#include "money/arranging_search.hpp"

#include <functional>

namespace bodkin::arranging {

// A node with the outcome so far.
struct NodeOutcome {
  Node node;
  std::uint32_t outcome = 0;
  bool operator==(const NodeOutcome &) const = default;
};
struct NodeOutcomeHash {
  std::size_t operator()(const NodeOutcome &key) const {
    return NodeHash{}(key.node) * 31 + key.outcome;
  }
};

struct Follower {
  Node node;
  std::uint32_t outcome = 0;
  Nano cost = 0;  // by the prices as they are eased, which is never above
  Nano real = 0;  // the cost by the prices themselves
  Nano bound = 0; // with the rest of the walk, as eased
  int moves = 0;
  std::uint32_t before = 0; // index in the layer before
  Laying laying{-1, 0};
};

// What the rest of a walk costs at the least from a node by eased prices; Rest::no_way where there
// is none.
using LeastRest = std::function<Nano(std::size_t at, const Node &node)>;

struct FollowingBounds {
  Nano most = 0;                                                 // nothing dearer is followed
  std::size_t at_each = std::numeric_limits<std::size_t>::max(); // the rest is left out
  std::size_t in_all = std::numeric_limits<std::size_t>::max();  // then it breaks off
};

class Following {
public:
  // By the choice's prices as they are eased, which the space has now. Without limits all of an
  // outcome is counted.
  Following(const Choice &choice, OrderSpace &space, LeastRest rest, const FollowingBounds &bounds);

  // Nothing was left out.
  bool all_followed() const { return all_followed_; }
  // By what they cost in truth, the cheapest first; none where it broke off.
  const std::vector<Follower> &arrived() const { return layers_.back(); }
  std::vector<int> order_of(const Follower &last) const;

private:
  using Index = std::unordered_map<NodeOutcome, std::uint32_t, NodeOutcomeHash>;
  void follow();
  std::vector<Follower> next_of(std::size_t at, const std::vector<Follower> &from);
  void take(std::size_t at, Follower &follower, std::vector<Follower> &next, Index &index) const;
  Nano eased_on(std::uint32_t use);
  void keep_most(std::vector<Follower> &next);

  const Choice choice_;
  OrderSpace &space_;
  LeastRest rest_;
  FollowingBounds bounds_;
  Outcomes outcomes_;
  std::map<std::uint32_t, Nano> eased_on_; // by use of a sheet
  bool all_followed_ = true;
  std::vector<std::vector<Follower>> layers_;
};

} // namespace bodkin::arranging
