#include "paperwork/price_cards.hpp"

#include <algorithm>
#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::paperwork;

namespace {

const CardSheet letter{.paper = {Length::inches(17, 2), Length::inches(11)},
                       .card = {Length::inches(15, 4), Length::inches(5, 2)}};

// Whether a mark has a point within a card, or on its edge.
bool touches(const WasteMark &mark, const Box &card) {
  return mark.to.x >= card.x && mark.from.x <= card.right() && mark.to.y >= card.y &&
         mark.from.y <= card.foot();
}

} // namespace

// Derived: (8 1/2 - 2 x 3 3/4) / 2 and (11 - 4 x 2 1/2) / 2 are half an inch.
TEST_CASE("eight cards lie edge to edge in the middle of a letter sheet") {
  const std::vector<Box> places = places_of_cards(letter, 8);
  REQUIRE(places.size() == 8);
  CHECK(places[0] ==
        Box{Length::inches(1, 2), Length::inches(1, 2), letter.card.width, letter.card.height});
  CHECK(places[1].x == places[0].right());
  CHECK(places[2].y == places[0].foot());
  CHECK(places[7].right() == Length::inches(8));
  CHECK(places[7].foot() == Length::inches(21, 2));
}

TEST_CASE("every cut has a mark at both its ends, and no mark is on a card") {
  for (int cards = 1; cards <= 8; ++cards) {
    const std::vector<WasteMark> marks = marks_of_cards(letter, cards);
    const int across = std::min(cards, 2), down = (cards + 1) / 2;
    CHECK(marks.size() == static_cast<std::size_t>(2 * (across + 1) + 2 * (down + 1)));
    for (const WasteMark &mark : marks)
      for (const Box &card : places_of_cards(letter, cards))
        CHECK_FALSE(touches(mark, card));
  }
}

// A copier's bare edge is taken for 1/4in (common practice, no source).
TEST_CASE("marks keep off the edge that a copier leaves bare") {
  const Length bare = Length::inches(1, 4);
  for (const WasteMark &mark : marks_of_cards(letter, 8)) {
    CHECK(std::min(mark.from.x, mark.from.y) >= bare);
    CHECK(mark.to.x <= letter.paper.width - bare);
    CHECK(mark.to.y <= letter.paper.height - bare);
  }
}
