#include "paperwork/making.hpp"

#include <doctest/doctest.h>

using namespace bodkin::paperwork;
using bodkin::Length;
using bodkin::Ruler;

// Derived: thirty-seconds of an inch, halves of a millimetre.
TEST_CASE("a length is told as a ruler shows it") {
  CHECK(ruled(Length::points(158), Ruler::inches) == "2 3/16in");
  CHECK(ruled(Length::points(264), Ruler::inches) == "3 21/32in");
  CHECK(ruled(Length::inches(1, 2), Ruler::inches) == "1/2in");
  CHECK(ruled(Length::inches(3), Ruler::inches) == "3in");
  CHECK(ruled(Length{}, Ruler::inches) == "0in");
  CHECK(ruled(Length::points(72), Ruler::millimetres) == "25.5mm");
  CHECK(ruled(Length::mm(12), Ruler::millimetres) == "12mm");
}

TEST_CASE("a measure that no ruler shows is told as near as one does") {
  CHECK(measured(Length::inches(9, 8), Ruler::inches) == "1 1/8in");
  CHECK(measured(Length::inches(7, 6), Ruler::inches) == "1 5/32in"); // 1.1667in
  CHECK(measured(Length::mm(97) / 2, Ruler::millimetres) == "48.5mm");
}

TEST_CASE("counts agree with their nouns") {
  CHECK(counted(1, "copy", "copies") == "1 copy");
  CHECK(counted(3, "copy", "copies") == "3 copies");
}
