// The figures of the language's own sample, an edition of 8 pages on a card and a rose sheet. They
// were worked out on paper before the compiler was written.
#include "money/report.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

Shop night_bus() {
  Shop shop(2, 50);
  Edition &edition = shop.edition;
  edition.title.value = "Night Bus Almanac";
  edition.run.value.spare = 3;
  edition.budget = Known<Budget>{{dollars("1.40"), false}, {}};
  edition.price = Known<Price>{dollars("5"), {}};
  shop.machine().name = "corner-copier";
  shop.machine().prints = {side_price(Mode::black, "0.12"), side_price(Mode::colour, "0.59")};
  shop.paper().name = "board";
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("14.75", Per::sheets, 250), {}};
  Stock rose;
  rose.name = "rose";
  rose.tint.value = {0xf3, 0xb3, 0xc0};
  rose.costs = Known<Rate>{rate("11.90", Per::sheets, 500), {}};
  edition.stocks.push_back(rose);
  shop.imposition.sheets[1].stock = StockId{1};
  shop.colour(1, 0);
  Element &stamp = shop.on_page(1, hand(HandKind::stamp, "lino moon"));
  stamp.work.takes = Known<Takes>{takes(20, TimePer::copy), {}};
  stamp.work.costs = {{rate("6.50", Per::once), {}}};
  Bid bid;
  bid.name = "mail-order";
  bid.prints = {{Mode::colour, {}}};
  bid.steps = {{1, rate("3.10", Per::copy), {}},
               {25, rate("2.10", Per::copy), {}},
               {100, rate("0.95", Per::copy), {}}};
  bid.postage = {{1, rate("7.50", Per::once), {}}};
  edition.bids.push_back(bid);
  return shop;
}

} // namespace

TEST_CASE("the sample's figures come out to the cent") {
  const Estimate estimate = night_bus().priced();
  CHECK(lines(estimate) == "53 × 0.59 = 31.27 colour sides at corner-copier (printing)\n"
                           "159 × 0.12 = 19.08 black sides at corner-copier (printing)\n"
                           "53 × 0.059 = 3.13 board sheets (paper)\n"
                           "53 × 0.0238 = 1.26 rose sheets (paper)\n"
                           "1 × 6.50 = 6.50 stamp lino moon (hand)\n");
  CHECK(estimate.run_total.rounded(2, 12) == "61.2384");
  CHECK(estimate.per_copy.rounded(2) == "1.22");
  CHECK(estimate.purse_total.rounded(2) == "83.50");
  CHECK(estimate.one_more_copy.rounded(2) == "1.03");
  CHECK(estimate.minutes.rounded(1) == "17.7");
  REQUIRE(estimate.budget);
  CHECK_FALSE(estimate.budget->over);
}

TEST_CASE("the sample's bid is dearer bare and like for like") {
  const Estimate estimate = night_bus().priced();
  REQUIRE(estimate.bids.size() == 1);
  const BidFigures &bid = estimate.bids.front();
  CHECK(bid.run_total->rounded(2) == "112.50");
  CHECK(bid.per_copy->rounded(2) == "2.25");
  CHECK(bid.like_for_like->rounded(2) == "119.00");
  CHECK(bid.cannot == std::vector<std::string>{
                          "a second paper, as far as it says (it names no `papers`): one stock "
                          "throughout, where this edition has board and rose",
                          "coloured stock, as far as it says: rose", "hand work: stamp lino moon"});
  CHECK(bid.still_yours == std::vector<std::string>{"stamp lino moon: $6.50, 16.7 min"});
}

TEST_CASE("from 100 copies on the sample's bid is the cheapest way") {
  const Estimate estimate = night_bus().priced();
  CHECK(estimate.cheapest_at_one_copy == "own");
  CHECK(estimate.crossings == std::vector<Crossing>{{100, "own", "mail-order"}});
}

TEST_CASE("the sample's estimate as a document for programs") {
  const Shop shop = night_bus();
  CHECK(estimate_as_json(shop.priced(), shop.sources) ==
        R"({
  "currency": "USD",
  "copies": 50,
  "spare": 3,
  "one_more_copy": "1.03",
  "per_copy": "1.22",
  "run_total": "61.24",
  "purse_total": "83.50",
  "minutes": "17.7",
  "lines": [
    {"what": "colour sides at corner-copier", "group": "printing", "quantity": 53, "rate": "0.59", "total": "31.27", "from": null},
    {"what": "black sides at corner-copier", "group": "printing", "quantity": 159, "rate": "0.12", "total": "19.08", "from": null},
    {"what": "board sheets", "group": "paper", "quantity": 53, "rate": "0.059", "total": "3.13", "from": null},
    {"what": "rose sheets", "group": "paper", "quantity": 53, "rate": "0.0238", "total": "1.26", "from": null},
    {"what": "stamp lino moon", "group": "hand", "quantity": 1, "rate": "6.50", "total": "6.50", "from": null}
  ],
  "purchases": [
    {"what": "board sheets", "needed": 53, "at_hand": 0, "bought": 53, "cut_out_of_each": 1, "packs": 1, "total": "14.75"},
    {"what": "rose sheets", "needed": 53, "at_hand": 0, "bought": 53, "cut_out_of_each": 1, "packs": 1, "total": "11.90"}
  ],
  "budget": {"limit": "1.40", "of": "copy", "over": false},
  "bids": [
    {"name": "mail-order", "run_total": "112.50", "per_copy": "2.25", "like_for_like": "119.00", "setup": "0.00", "postage": "7.50", "tax": "0.00", "until": null, "left_out": null, "cannot": ["a second paper, as far as it says (it names no `papers`): one stock throughout, where this edition has board and rose", "coloured stock, as far as it says: rose", "hand work: stamp lino moon"], "still_yours": ["stamp lino moon: $6.50, 16.7 min"]}
  ],
  "crossings": [
    {"copies": 100, "from": "own", "to": "mail-order"}
  ],
  "runs": [],
  "machine_times": [],
  "kept": [],
  "sales": null,
  "paid": [],
  "post": []
}
)");
}

TEST_CASE("the sample's estimate as text that a pencil can check") {
  const Shop shop = night_bus();
  CHECK(estimate_as_text(shop.edition, shop.priced(), shop.sources, false) ==
        R"(Night Bus Almanac
50 copies and 3 spare: 53 printed. Money in USD.

  colour sides at corner-copier   53 ×   $0.59 = $31.27
  black sides at corner-copier   159 ×   $0.12 = $19.08
  board sheets                    53 ×  $0.059 =  $3.13
  rose sheets                     53 × $0.0238 =  $1.26
  stamp lino moon                  1 ×   $6.50 =  $6.50

  the run, everything used .............................................. $61.24
  a copy, that ÷ 50 ...................................................... $1.22
  one copy more, at the prices reached ................................... $1.03
  out of the purse, paper in whole packs ................................ $83.50
      board sheets: 1 pack of 250 at $14.75
      rose sheets: 1 pack of 500 at $11.90
  work by hand, where every spare is made up too ...................... 17.7 min
  budget $1.40 a copy (default) ................................. $0.18 to spare
  price $5.00 a copy (default) ................................... $3.78 remains

  Each figure is rounded half up for show; sums are made of unrounded figures.

Offers for 50 copies

  mail-order (default)
    bare            $112.50 the run, $2.25 a copy
    like for like   $119.00 the run, $2.38 a copy
    in it           postage $7.50
    cannot do a second paper, as far as it says (it names no `papers`): one
    stock throughout, where this edition has board and rose
    cannot do coloured stock, as far as it says: rose
    cannot do hand work: stamp lino moon
    still yours: stamp lino moon: $6.50, 16.7 min

  Like for like, the cheapest way is your own making up to 99 copies; from 100
  on mail-order.
)");
}

} // namespace bodkin::tests
