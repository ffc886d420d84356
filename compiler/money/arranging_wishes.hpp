// Which pages of the book may move, and which only together: what the cover, spreads, texts that
// run on and `stays` ask of an order of pages.
#pragma once

#include "edition/edition.hpp"

#include <vector>

namespace bodkin::arranging {

struct Wish {
  enum class Why { cover, spread, text, broken_text, piece, maker };
  Why why = Why::maker;
  bool stays = false;     // these pages stay where they are, else they keep together
  std::vector<int> pages; // rising; kept together they follow each other
  Range from;             // the `stays` line, the spread or the text
};

// In order of their first pages.
std::vector<Wish> wishes_of(const Edition &edition);

// Pages that move as one; every page of the book is in one block.
struct PageBlock {
  int first = 0, length = 1;
  bool stays = false;
  bool holds_spread = false; // turns neither its left pages to the right nor the other way round
};

// In order of pages.
std::vector<PageBlock> blocks_of(const Edition &edition, const std::vector<Wish> &wishes);

} // namespace bodkin::arranging
