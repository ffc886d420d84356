#include "measure/length.hpp"

#include "asked.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

TEST_CASE("inches, points and millimetres are whole numbers of units") {
  CHECK(Length::per_inch % 64 == 0);
  CHECK(Length::per_inch % 100'000 == 0);
  CHECK(Length::per_inch * 10 % 254 == 0);
  CHECK(Length::per_mm % 1000 == 0);
  CHECK(Length::per_inch % 72 == 0);
  CHECK(Length::per_point % 1000 == 0);
}

TEST_CASE("parts of an inch add up to an inch exactly") {
  Length sum;
  for (int i = 0; i < 64; ++i)
    sum += Length::inches(1, 64);
  CHECK(sum == Length::inches(1));
  CHECK(Length::mm(254) == Length::inches(10));
  CHECK(Length::points(72) == Length::inches(1));
  CHECK(Length::inches(1, 100'000) * 100'000 == Length::inches(1));
}

TEST_CASE("five and a half inches is half of letter paper's long edge") {
  CHECK(Length::inches(11) / 2 == Length::inches(5) + Length::inches(1, 2));
}

// GNU units, which holds the international inch.
TEST_CASE("lengths agree with GNU units") {
  CHECK(std::stod(asked("units -t -d 15 '1|64 inch' mm")) ==
        doctest::Approx(Length::inches(1, 64).in_mm()).epsilon(1e-13));
  CHECK(std::stod(asked("units -t -d 15 '1 mm' 'inch/72'")) ==
        doctest::Approx(Length::mm(1).in_points()).epsilon(1e-13));
}

TEST_CASE("a computed number of points becomes the nearest unit") {
  CHECK(Length::nearest_points(72.0) == Length::inches(1));
  CHECK(Length::nearest_points(-36.0) == -Length::inches(1, 2));
  CHECK(Length::nearest_points(0.6 / static_cast<double>(Length::per_point)) == Length::units(1));
}

TEST_CASE("lengths are written as a maker would, in inches") {
  const auto written_in = [](Length length) { return written(length, Ruler::inches); };
  CHECK(written_in(Length{}) == "0");
  CHECK(written_in(Length::inches(1, 4)) == "1/4in");
  CHECK(written_in(Length::inches(11, 2)) == "5 1/2in");
  CHECK(written_in(Length::inches(17)) == "17in");
  CHECK(written_in(Length::inches(3, 16)) == "3/16in");
  CHECK(written_in(-Length::inches(9, 8)) == "-1 1/8in");
  CHECK(written_in(Length::inches(58, 1000)) == "0.058in");
  CHECK(written_in(-Length::inches(23, 1000)) == "-0.023in");
  CHECK(written_in(Length::inches(1, 64)) == "0.0156in");
  CHECK(written_in(Length::inches(1, 100'000)) == "0in");
}

TEST_CASE("lengths are written in millimetres for a metric edition") {
  CHECK(written(Length::mm(3), Ruler::millimetres) == "3mm");
  CHECK(written(Length::mm(148), Ruler::millimetres) == "148mm");
  CHECK(written(Length::inches(1, 4), Ruler::millimetres) == "6.35mm");
  CHECK(written(-Length::mm(5) / 2, Ruler::millimetres) == "-2.5mm");
  CHECK(written(Length{}, Ruler::millimetres) == "0");
}

TEST_CASE("in a sentence lengths are no finer than a maker reads them") {
  const auto inches = [](Length length) { return rounded(length, Ruler::inches); };
  CHECK(inches(Length{}) == "0");
  CHECK(inches(Length::inches(1, 8)) == "1/8in");
  CHECK(inches(Length::inches(2386, 10'000)) == "0.239in");
  CHECK(inches(-Length::inches(2386, 10'000)) == "-0.239in");
  CHECK(inches(Length::inches(23, 1000)) == "0.023in");
  const auto mm = [](Length length) { return rounded(length, Ruler::millimetres); };
  CHECK(mm(Length{}) == "0");
  CHECK(mm(Length::mm(5)) == "5mm");
  CHECK(mm(Length::inches(1, 16)) == "1.6mm");
  CHECK(mm(Length::inches(23, 1000)) == "0.58mm");
}

TEST_CASE("a length that is to fit is written no longer than it is") {
  // Divisions worked out by hand.
  CHECK(written_down(Length::mm(297) / 3, Ruler::millimetres) == "99mm");
  CHECK(written_down((Length::mm(297) - Length::inches(1, 2)) / 4, Ruler::millimetres) ==
        "71.075mm");
  CHECK(written_down(Length::mm(100) / 3, Ruler::millimetres) == "33.33mm");
  CHECK(written_down(Length::inches(11) / 3, Ruler::inches) == "3.666in");
  CHECK(written_down(Length::inches(17, 4), Ruler::inches) == "4 1/4in");
  CHECK(written_down(Length::inches(25, 10'000), Ruler::inches) == "0.0025in");
  CHECK(written_down(Length::inches(1, 16), Ruler::millimetres) == "1.58mm");
  CHECK(written_down(Length(), Ruler::millimetres) == "0");
  CHECK(written_down(Length::inches(17, 2), Ruler::millimetres) == "215.9mm");
}
