// Which further pages could have colour, or a coloured paper, for the least money more: sides that
// are paid as colour have room for it already.
#pragma once

#include "money/arranging_question.hpp"

#include <vector>

namespace bodkin {

// Pages and what they would cost more, a run; less than nothing where they would cost less.
struct Extra {
  std::vector<int> pages; // of one side or sheet, by their numbers in the order asked about
  StockId stock = StockId::none;
  Exact more;
  int as_cheap = 0; // other sides or sheets at the same money
};

struct ColourRoom {
  int colour_pages = 0;
  int colour_sides = 0;
  std::vector<int> free;     // black pages on sides that are paid as colour
  std::vector<Extra> sides;  // the cheapest further side, if any
  std::vector<Extra> papers; // of each paper that a page asks for, the cheapest further sheet
};

ColourRoom colour_room(const Edition &edition, const std::vector<bool> &draws,
                       const Sources &sources);

// Sides that are charged as colour, of the book and its pieces.
int colour_sides(const Laid &laid);

} // namespace bodkin
