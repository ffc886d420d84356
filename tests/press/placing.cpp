#include "press/placing.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::press;

// A page of 100 by 200 points whose place begins 10 across and 20 down on a sheet 400 high. Its top
// left corner is a corner of the place, which one its turn says; y runs up on the sheet.
TEST_CASE("a page is turned within its place on the sheet") {
  const Size page{Length::points(100), Length::points(200)};
  const Size sheet{Length::points(600), Length::points(400)};
  Place place;
  const auto corner = [&](int turn) {
    place.turn = turn;
    const bool lying = turn % 180 == 90;
    place.box = {Length::points(10), Length::points(20), Length::points(lying ? 200 : 100),
                 Length::points(lying ? 100 : 200)};
    return page_to_sheet(place, page, sheet)({0, 0});
  };
  CHECK(corner(0).x == doctest::Approx(10));
  CHECK(corner(0).y == doctest::Approx(380));
  CHECK(corner(90).x == doctest::Approx(210));
  CHECK(corner(90).y == doctest::Approx(380));
  CHECK(corner(180).x == doctest::Approx(110));
  CHECK(corner(180).y == doctest::Approx(180));
  CHECK(corner(270).x == doctest::Approx(10));
  CHECK(corner(270).y == doctest::Approx(280));
}

TEST_CASE("creep is made up for towards the spine") {
  Place place;
  place.shift = Length::points(2);
  place.spine = SpineAt::left;
  CHECK(shift_right(place) == Length::points(-2));
  place.spine = SpineAt::right;
  CHECK(shift_right(place) == Length::points(2));
}
