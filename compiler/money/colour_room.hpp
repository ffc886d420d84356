// Which further pages could have colour, or a coloured paper, for the least money more: sides that
// are paid as colour have room for it already.
#pragma once

#include "money/arranging_question.hpp"

#include <optional>
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
  std::vector<int> colour_pages; // by run that is printed otherwise, or one number
  int colour_sides = 0;          // of all runs
  std::vector<int> free;         // black pages on sides that are paid as colour, in every run
  std::vector<Extra> sides;      // the cheapest further side, if any
  std::vector<Extra> papers;     // of each paper that a page asks for, the cheapest further sheet
};

ColourRoom colour_room(const Edition &edition, const std::vector<bool> &draws,
                       const Sources &sources);

// Sides that are charged as colour, of the book and its pieces: of all runs, or of a copy of one.
int colour_sides(const Laid &laid, std::optional<std::uint32_t> run = {});

} // namespace bodkin
