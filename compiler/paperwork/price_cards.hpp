// Cards that tell the price, to lie beside the copies on a table: what stands on one, and how they
// lie on the sheets that they are cut from.
#pragma once

#include "paperwork/making.hpp"

#include <string>
#include <vector>

namespace bodkin::paperwork {

// Cards edge to edge, one cut between two of them, with waste all round for the marks.
struct CardSheet {
  Size paper, card;
  int across = 2, down = 4;

  int most() const { return across * down; }
  Spot corner() const { // of the first card
    return {(paper.width - card.width * across) / 2, (paper.height - card.height * down) / 2};
  }
};
// Where so many cards stand, row by row.
std::vector<Box> places_of_cards(const CardSheet &sheet, int cards);
// In the waste at both ends of every cut that so many cards need; nothing of a mark is on a card.
struct WasteMark {
  Spot from, to;
  auto operator<=>(const WasteMark &) const = default;
};
std::vector<WasteMark> marks_of_cards(const CardSheet &sheet, int cards);

struct PriceCards {
  std::int64_t count = 0;
  CardSheet sheet;
  std::string title, subtitle, maker;
  std::string issue; // "Number 2, October 2026"
  std::string facts; // a line each: "12 pages on plain", "50 copies"
  std::string price; // as the manuscript writes it
};
// Of an edition that asks for some.
PriceCards price_cards(const Making &making, const Sources &sources);

} // namespace bodkin::paperwork
