// The order of a book's pages that costs least, with what it saves: `bodkin arrange`.
#pragma once

#include "money/arranging_question.hpp"
#include "problems/problem.hpp"

#include <optional>
#include <vector>

namespace bodkin {

struct Arrangement {
  std::vector<arranging::Wish> wishes;
  std::vector<arranging::PageBlock> blocks;
  std::vector<int> movable;                    // pages that may move, rising
  std::optional<arranging::Arranged> cheapest; // none: no order that can be printed was found
  bool none_for_sure = false; // where there is no cheapest; else there were too many to try all
  bool printable_as_written = false;
  Exact total_as_written, total;            // of the run
  std::vector<Exact> runs_as_written, runs; // a copy of each of several runs
  Laid laid;                                // in the cheapest order

  bool saves_nothing() const { return cheapest && cheapest->moves == 0; }
  Exact saved() const { return total_as_written - total; } // of the run
  // No order costs a cent of the run less.
  bool proved() const;
  Exact gap() const; // of the run; zero where it is proved
};

// `draws` is by page, numbered on through the pieces.
Arrangement arrange(const Edition &edition, const Laid &laid, const std::vector<bool> &draws,
                    const Sources &sources, const arranging::Effort &effort = {});

// Where no order can be printed: the lines that cannot all be had, and which to drop.
Problems arranging_problems(const Edition &edition, const Laid &laid,
                            const std::vector<bool> &draws, const Arrangement &arrangement,
                            const Sources &sources);

} // namespace bodkin
