// Checked against Debian's iso-codes, which has the list of ISO 4217.
#include "measure/currencies.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fstream>
#include <set>
#include <string>

namespace bodkin::tests {
namespace {

std::set<std::string> codes_of_iso_codes() {
  std::ifstream list("/usr/share/iso-codes/json/iso_4217.json");
  REQUIRE(list.is_open());
  std::set<std::string> codes;
  const std::string key = "\"alpha_3\": \"";
  for (std::string line; std::getline(list, line);)
    if (const std::size_t at = line.find(key); at != std::string::npos)
      codes.insert(line.substr(at + key.size(), 3));
  return codes;
}

} // namespace

TEST_CASE("the codes of money are those of ISO 4217") {
  const std::set<std::string> known(currency_codes().begin(), currency_codes().end());
  CHECK(known == codes_of_iso_codes());
  CHECK(std::is_sorted(currency_codes().begin(), currency_codes().end()));
  CHECK(is_currency_code("KWD"));
  CHECK_FALSE(is_currency_code("XYZ"));
}

// From memory of the standard's column "minor unit".
TEST_CASE("money without a smaller unit is written without decimals, dinars with three") {
  const auto one = [](std::string_view code) { return written(Price{{1, 0}, currency_of(code)}); };
  CHECK(one("JPY") == "1 JPY");
  CHECK(one("ISK") == "1 ISK");
  CHECK(one("KWD") == "1.000 KWD");
  CHECK(one("CAD") == "1.00 CAD");
  CHECK(one("EUR") == "€1.00");
  CHECK(written(Price{{125, 1}, currency_of("JPY")}) == "12.5 JPY");
}

} // namespace bodkin::tests
