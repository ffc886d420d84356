#include "money/report.hpp"
#include "money/shop.hpp"
#include "money/table.hpp"
#include "problems/characters.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {

TEST_CASE("places go below their figures where a row would pass 80 columns") {
  const std::vector<std::string> set =
      set_in_columns({{"a name of forty letters, or very nearly so", "1", "$1.00", "$1.00",
                       "a/long/way/to/almanac.bodkin:43"},
                      {"short", "200", "$0.50", "$100.00", "b.bodkin:1"}});
  CHECK(set == std::vector<std::string>{
                   "  a name of forty letters, or very nearly so    1 × $1.00 =   $1.00",
                   "    a/long/way/to/almanac.bodkin:43",
                   "  short                                       200 × $0.50 = $100.00",
                   "    b.bodkin:1"});
}

TEST_CASE("a name too long for its column stands above its figures") {
  const std::vector<std::string> set =
      set_in_columns({{std::string(70, 'x'), "1", "$1.00", "$1.00", ""}});
  REQUIRE(set.size() == 2);
  CHECK(set[0] == "  " + std::string(70, 'x'));
  CHECK(set[1] == std::string(63, ' ') + "1 × $1.00 = $1.00");
}

TEST_CASE("every line of a large estimate keeps to 80 columns") {
  Shop shop(20, 1'000);
  for (int i = 0; i < 3; ++i)
    shop.on_page(1, hand(HandKind::sticker, fmt::format("moon {}", i))).work.costs = {
        {rate("999999.123456", Per::copy), {}}};
  const std::string text = estimate_as_text(shop.edition, shop.priced(), shop.sources, false);
  int widest = 0;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = text.find('\n', begin);
    widest = std::max(widest, columns_of(std::string_view(text).substr(begin, end - begin)));
    begin = end + 1;
  }
  CHECK(widest <= 80);
  CHECK(text.find("999999.123456 = $") != std::string::npos);
}

TEST_CASE("quotes, backslashes and controls of a name are escaped for programs") {
  Shop shop(1, 1);
  shop.on_page(1, hand(HandKind::sticker, "a \"b\" \\ \t")).work.costs = {
      {rate("1", Per::once), {}}};
  const std::string json = estimate_as_json(shop.priced(), shop.sources);
  CHECK(json.find(R"("what": "sticker a \"b\" \\ \u0009")") != std::string::npos);
}

TEST_CASE("an edition without budget, bids or money has empty places for them") {
  Shop shop(1, 2);
  shop.edition.currency.value = {};
  for (ChargedSide &side : shop.sides)
    side.printed = false;
  CHECK(estimate_as_json(shop.priced(), shop.sources) == R"({
  "currency": null,
  "copies": 2,
  "spare": 0,
  "one_more_copy": "0.00",
  "per_copy": "0.00",
  "run_total": "0.00",
  "purse_total": "0.00",
  "minutes": "0.0",
  "lines": [],
  "purchases": [],
  "budget": null,
  "bids": [],
  "crossings": [],
  "runs": [],
  "machine_times": [],
  "kept": [],
  "sales": null,
  "paid": [],
  "post": []
}
)");
}

TEST_CASE("a bid that offers no such run has no figures") {
  Shop shop(1, 2);
  Bid bid;
  bid.name = "printer";
  bid.steps = {{25, rate("1", Per::copy), {}}};
  shop.edition.bids = {bid};
  const std::string json = estimate_as_json(shop.priced(), shop.sources);
  CHECK(
      json.find(
          R"({"name": "printer", "run_total": null, "per_copy": null, )"
          R"("like_for_like": null, "setup": "0.00", "postage": "0.00", "tax": "0.00", )"
          R"("until": null, "left_out": null, "cannot": ["a run of 2: its prices begin at 25 copies"], )"
          R"("still_yours": []})") != std::string::npos);
}

} // namespace bodkin::tests
