// All nodes of a walk, place by place, and what the rest of the walk costs at the least from each.
#pragma once

#include "money/arranging_space.hpp"

#include <compare>
#include <limits>

namespace bodkin::arranging {

// The cheapest first, then the fewest moves.
struct Rest {
  static constexpr Nano no_way = std::numeric_limits<Nano>::max();
  Nano cost = no_way;
  int moves = 0;
  auto operator<=>(const Rest &) const = default;
};

struct Layer {
  std::vector<Node> nodes;
  std::vector<Rest> rest;
  std::unordered_map<Node, std::uint32_t, NodeHash> index;
};

class Layers {
public:
  // Nodes from the start on; more than `most` of them are not kept, and the walk is not whole.
  Layers(OrderSpace &space, std::size_t most);
  bool whole() const { return whole_; }
  // Works out all rests, by the prices that the space has now.
  void look_back();
  Rest from_start() const { return layers_.front().rest.front(); }
  // No way on from a node that is not among these.
  Rest rest(std::size_t at, const Node &node) const;
  // The cheapest walk with the fewest moves; there has to be one.
  std::vector<Laying> best() const;

private:
  void reach(std::size_t most);
  OrderSpace &space_;
  std::vector<Layer> layers_; // by place of the walk, and one after the last
  bool whole_ = true;
};

// Of steps and rests: nothing where there is no way.
Rest after(const Step &step, const Rest &rest);

} // namespace bodkin::arranging
