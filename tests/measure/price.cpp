#include "measure/price.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

std::string rate(std::int64_t cents, Per per, std::int64_t count = 1) {
  return written(Rate{{{cents, 2}, currency_of("USD")}, per, count});
}

} // namespace

TEST_CASE("money is written with its sign, or with its code where it has none here") {
  CHECK(written(Price{{12, 2}, currency_of("USD")}) == "$0.12");
  CHECK(written(Price{{21, 1}, currency_of("GBP")}) == "£2.10");
  CHECK(written(Price{{3, 0}, currency_of("EUR")}) == "€3.00");
  CHECK(written(Price{{125, 1}, currency_of("CAD")}) == "12.50 CAD");
  CHECK(written(Price{{5, 0}, {}}) == "5.00");
}

TEST_CASE("every written digit of money is kept") {
  CHECK(written(Price{{37, 3}, currency_of("USD")}) == "$0.037");
}

TEST_CASE("the sign of a loss stands before the currency's") {
  CHECK(written(Price{{-150, 2}, currency_of("USD")}) == "-$1.50");
  CHECK(written(Price{{-150, 2}, currency_of("CAD")}) == "-1.50 CAD");
}

TEST_CASE("a currency is a code of three letters") {
  CHECK(currency_of("USD").code() == "USD");
  CHECK(currency_of("US").empty());
  CHECK(Currency{}.code().empty());
}

TEST_CASE("rates are written in the words of the language") {
  CHECK(rate(12, Per::side) == "$0.12 a side");
  CHECK(rate(9, Per::sheet) == "$0.09 a sheet");
  CHECK(rate(140, Per::copy) == "$1.40 a copy");
  CHECK(rate(300, Per::plate) == "$3.00 a plate");
  CHECK(rate(500, Per::pass) == "$5.00 a pass");
  CHECK(rate(6400, Per::run) == "$64.00 a run");
  CHECK(rate(5, Per::each) == "$0.05 each");
  CHECK(rate(1850, Per::sheets, 500) == "$18.50 per 500 sheets");
  CHECK(rate(4000, Per::sides, 2600) == "$40.00 per 2600 sides");
  CHECK(rate(1200, Per::hour) == "$12.00 an hour");
  CHECK(rate(750, Per::once) == "$7.50 once");
}
