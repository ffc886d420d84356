// The orders of a book's pages as a walk from place to place, sheet by sheet: at each place one of
// the blocks that are still in hand is laid down. What the walk has to remember is only which kinds
// of blocks are left, what the sheet at hand holds, and which places ahead a block has taken; walks
// that agree in that are one node, so that counts of pages alike stand for all their orders.
#pragma once

#include "money/arranging_task.hpp"

#include <cstddef>
#include <map>
#include <unordered_map>
#include <utility>
#include <vector>

namespace bodkin::arranging {

struct Node {
  std::uint64_t in_hand = 0; // how many of each group, in mixed radix
  std::uint32_t use = 0;     // of the sheet at hand
  std::uint32_t taken = 0;   // places ahead with their kinds of page
  bool operator==(const Node &) const = default;
};
struct NodeHash {
  std::size_t operator()(const Node &node) const {
    const std::uint64_t mixed =
        (node.in_hand ^ (std::uint64_t{node.use} << 40) ^ (std::uint64_t{node.taken} << 20)) *
        0x9e3779b97f4a7c15U;
    return static_cast<std::size_t>(mixed ^ (mixed >> 29));
  }
};

// Blocks alike: the same kinds of page in the same order.
struct Group {
  std::vector<int> kinds;
  bool from_left = false, from_right = false;
  std::vector<int> firsts; // of its blocks as written
  std::uint64_t radix = 1;
};

struct Step {
  Node next;
  Nano cost = 0;  // of the sheet, where this place ends it
  int moves = 0;  // pages that get another number
  int group = -1; // laid down here, with its first page on `first`; -1: the place was taken
  int first = 0;
  std::uint32_t ended = 0; // the sheet's use where it ends here, settled; 0: it goes on
};

// A block of a group on a place.
struct Laying {
  int group = 0, first = 0;
};

class OrderSpace {
public:
  explicit OrderSpace(const Task &task);
  // Other prices for the same walks; they outlive this.
  void price_by(const Costs &costs);

  // False where there are more kinds of blocks than can be counted here.
  bool countable() const { return countable_; }
  std::size_t places() const { return sequence_.size(); }
  Node start() const { return start_; }
  // Every way to fill the place number `at` (in the order of the walk) from this node.
  void steps(std::size_t at, const Node &node, std::vector<Step> &found);
  const SheetUse &use(std::uint32_t id) const { return uses_[id]; }
  const std::vector<Group> &groups() const { return groups_; }
  const std::vector<std::pair<int, int>> &taken(std::uint32_t id) const { return takings_[id]; }
  // The order in which these groups are laid, each on its own block where it can be.
  std::vector<int> order_of(const std::vector<Laying> &layings) const;

  std::uint32_t id_of_use(const SheetUse &use);
  std::uint32_t id_of_taken(const std::vector<std::pair<int, int>> &taken);

private:
  using Taken = std::vector<std::pair<int, int>>; // place, kind; rising
  static constexpr std::uint32_t impossible = 0xffffffff;

  void gather_groups();
  void lay_in_hand();
  bool fits(const Group &group, int first, int here, const Taken &taken) const;
  void lay(std::size_t at, const Node &node, int kind, Step step, std::vector<Step> &found);
  std::uint32_t with_page(std::uint32_t use, int kind, int side);
  std::pair<std::uint32_t, Nano> settled(std::uint32_t use, int sheet);

  const Task &task_;
  const Costs *costs_;
  std::vector<Group> groups_;
  std::vector<int> fixed_;         // by place: the kind of the page that stays there, or -1
  std::vector<int> written_group_; // by place: the group of the block that begins there, or -1
  std::vector<int> sequence_;      // places in the order of the walk
  std::vector<std::size_t> rank_;  // by place
  std::vector<SheetUse> uses_;
  std::map<SheetUse, std::uint32_t> use_ids_;
  std::vector<std::vector<std::uint32_t>> with_page_; // by use: by side and kind
  std::map<std::pair<std::uint32_t, int>, std::pair<std::uint32_t, Nano>> settled_;
  std::vector<Taken> takings_;
  std::map<Taken, std::uint32_t> taken_ids_;
  Node start_;
  bool countable_ = true;
};

} // namespace bodkin::arranging
