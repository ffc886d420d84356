#include "money/exact.hpp"

#include <doctest/doctest.h>
#include <limits>

namespace bodkin {

TEST_CASE("thirds of a dollar add up to the dollar") {
  const Exact third = Exact::ratio(10, 300);
  CHECK(third + third + third == Exact::ratio(1, 10));
  CHECK(third.rounded(2, 12) == "0.033333333333");
}

TEST_CASE("a decimal is exact however small its last place") {
  CHECK(Exact(Decimal{1, 6}) * Exact(1'000'000) == Exact(1));
  CHECK(Exact(Decimal{123'456'789'012'345, 6}).rounded(2, 12) == "123456789.012345");
}

TEST_CASE("half a cent is rounded up, and just under half is not") {
  CHECK(Exact(Decimal{1'005, 3}).rounded(2) == "1.01");
  CHECK(Exact(Decimal{1'004'999'999, 9}).rounded(2) == "1.00");
  CHECK(Exact(Decimal{995, 3}).rounded(2) == "1.00");
  CHECK(Exact(Decimal{4, 3}).rounded(2) == "0.00");
  CHECK(Exact(Decimal{1766, 2}).rounded(1) == "17.7");
}

TEST_CASE("a rounded rate keeps two decimals and drops other noughts") {
  CHECK(Exact(Decimal{59, 2}).rounded(2, 12) == "0.59");
  CHECK(Exact(Decimal{5, 1}).rounded(2, 12) == "0.50");
  CHECK(Exact(Decimal{238, 4}).rounded(2, 12) == "0.0238");
  CHECK(Exact(53).rounded(0, 6) == "53");
  CHECK(Exact(Decimal{5035, 2}).rounded(0, 6) == "50.35");
}

TEST_CASE("floor and ceiling meet on whole numbers and part between them") {
  CHECK(Exact::ratio(7, 2).floor() == 3);
  CHECK(Exact::ratio(7, 2).ceiling() == 4);
  CHECK(Exact(-1).floor() == -1);
  CHECK(Exact::ratio(-1, 2).floor() == -1);
  CHECK(Exact::ratio(-1, 2).ceiling() == 0);
  CHECK(Exact(std::int64_t{1} << 40).floor() == std::int64_t{1} << 40);
}

TEST_CASE("numbers past 64 bits are kept and their floor is held at the end of the range") {
  const Exact huge = Exact(std::numeric_limits<std::int64_t>::max()) * Exact(1'000);
  CHECK(huge.rounded(0) == "9223372036854775807000");
  CHECK(huge.floor() == std::numeric_limits<std::int64_t>::max());
}

TEST_CASE("the least and the greatest whole numbers go in and come out") {
  CHECK(Exact(std::numeric_limits<std::int64_t>::min()).rounded(0) == "-9223372036854775808");
  CHECK(Exact(std::numeric_limits<std::int64_t>::max()).rounded(0) == "9223372036854775807");
}

TEST_CASE("money is shown with its sign or its code") {
  CHECK(shown(Exact(Decimal{612384, 4}), currency_of("USD")) == "$61.24");
  CHECK(shown(Exact(12), currency_of("CAD")) == "12.00 CAD");
  CHECK(shown(Exact(Decimal{238, 4}), currency_of("GBP"), 12) == "£0.0238");
}

TEST_CASE("money is shown with the decimals that it has") {
  const Exact sum = Exact::ratio(1'765, 2);
  CHECK(shown(sum, currency_of("JPY")) == "883 JPY");
  CHECK(shown(Exact(-3), currency_of("ISK")) == "−3 ISK");
  CHECK(shown(sum, currency_of("JPY"), 12) == "882.5 JPY");
  CHECK(shown(Exact::ratio(1, 8), currency_of("KWD")) == "0.125 KWD");
  CHECK(shown(sum, currency_of("EUR")) == "€882.50");
}

} // namespace bodkin
