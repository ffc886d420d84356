#include "measure/decimal.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

TEST_CASE("decimals are written with every digit that says something") {
  CHECK(written(Decimal{125, 1}) == "12.5");
  CHECK(written(Decimal{1250, 2}) == "12.5");
  CHECK(written(Decimal{12, 0}) == "12");
  CHECK(written(Decimal{5, 3}) == "0.005");
  CHECK(written(Decimal{-5, 3}) == "-0.005");
  CHECK(written(Decimal{0, 0}) == "0");
}

TEST_CASE("as many decimals as are asked for are written at least") {
  CHECK(written(Decimal{3, 0}, 2) == "3.00");
  CHECK(written(Decimal{125, 1}, 2) == "12.50");
  CHECK(written(Decimal{37, 3}, 2) == "0.037");
  CHECK(written(Decimal{12'000, 3}, 2) == "12.00");
}

TEST_CASE("a decimal's value is its digits over a power of ten") {
  CHECK(Decimal{125, 1}.value() == 12.5);
  CHECK(Decimal{-75, 2}.value() == -0.75);
}
