// An hour of work that is paid, tools kept, and money of elsewhere.
#include "money/manuscript.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

constexpr std::string_view stamped = "page 1-8\n  words \"Rain\" in label\n"
                                     "finish\n"
                                     "  fold       all\n"
                                     "    takes    30 s a copy\n"
                                     "  tie        \"with thread\"\n"
                                     "    takes    72 s a copy\n"
                                     "    costs    $5 once, kept\n";

} // namespace

TEST_CASE("labour is a line of hours, and leaves the purse") {
  const Priced of = priced(small_zine("  labour $12 an hour\n", "", stamped));
  CHECK(lines(of.estimate) == "200 × 0.10 = 20.00 black sides at copier (printing)\n"
                              "1 × 5.00 = 5.00 tie (finish)\n"
                              "1.416667 × 12.00 = 17.00 labour hours (hand)\n");
  CHECK(of.estimate.minutes == Exact(85));
  CHECK(of.estimate.purse_total == Exact(42));
}

TEST_CASE("beside a bid the labour of what stays yours is priced, and that of folding is not") {
  const Priced of =
      priced(small_zine("  labour $12 an hour\n", "bid near\n  copies 1 at $1 a copy\n", stamped));
  CHECK(of.estimate.bids[0].still_yours == std::vector<std::string>{"tie: $17.00, 60.0 min"});
  CHECK(*of.estimate.bids[0].like_for_like == Exact(67));
}

TEST_CASE("an hour that is paid and never worked is told") {
  CHECK(priced(small_zine("  labour $12 an hour\n", ""))
            .price_problems_text()
            .find("an hour of work is paid, and no work says how long it takes [idle-labour]") !=
        std::string::npos);
  CHECK(priced(small_zine("  labour $12 an hour\n", "", stamped)).price_problems_text().empty());
}

TEST_CASE("work that one run alone has is paid by its copies") {
  std::string manuscript =
      small_zine("  labour $36 an hour\n", "",
                 "page 1-8\n  words \"Rain\" in label\n"
                 "finish\n  fold       all\n    takes    10 s a copy\n"
                 "  tie        \"with thread\"\n    only     de-luxe\n    takes    100 s a copy\n");
  manuscript.replace(
      manuscript.find("  run        50 copies\n"), 23,
      "  run        40 copies called plain\n  run        10 copies called de-luxe\n");
  const Priced of = priced(manuscript);
  CHECK(lines(of.estimate) == "200 × 0.10 = 20.00 black sides at copier (printing)\n"
                              "0.138889 × 36.00 = 5.00 labour hours (hand)\n"
                              "0.277778 × 36.00 = 10.00 labour hours, de-luxe alone (hand)\n");
  // $20 and $5 for fifty copies, $10 for ten of them.
  CHECK(of.estimate.runs[0].per_copy == Exact::ratio(1, 2));
  CHECK(of.estimate.runs[1].per_copy == Exact::ratio(3, 2));
}

TEST_CASE("from the second impression on a kept tool costs nothing and is named") {
  const Priced of = priced(small_zine("  impression 2\n", "", stamped));
  CHECK(lines(of.estimate) == "200 × 0.10 = 20.00 black sides at copier (printing)\n");
  CHECK(of.estimate.kept == std::vector<std::string>{"tie: $5.00"});
  CHECK(priced(small_zine("  impression 1\n", "", stamped)).estimate.kept.empty());
}

TEST_CASE("a price in other money counts by the rate of exchange that is written") {
  const Priced of = priced(small_zine("  currency USD\n  exchange £2 is $2.50\n",
                                      "bid near\n  copies 1 at £1 a copy\n"));
  CHECK(*of.estimate.bids[0].run_total == Exact::ratio(125, 2));
  CHECK(of.price_problems_text().empty());
}

TEST_CASE("a rate of exchange may be written either way round") {
  const Priced of = priced(small_zine("  currency USD\n  exchange $2.50 is £2\n",
                                      "bid near\n  copies 1 at £1 a copy\n"));
  CHECK(*of.estimate.bids[0].run_total == Exact::ratio(125, 2));
}

TEST_CASE("a rate of exchange between a money and itself, or with nothing, is told") {
  CHECK(tests::read(small_zine("  exchange $1 is $2\n  exchange £0 is $1\n", "")).found() ==
        "error almanac.bodkin:7:3 idle-exchange\n"
        "error almanac.bodkin:8:3 idle-exchange\n"
        "note almanac.bodkin:13:7 unused-paper\n");
  CHECK(tests::read(small_zine("  exchange £1 is €2\n", "")).problem("idle-exchange")->why ==
        "this edition counts in USD");
}

TEST_CASE("work is paid by the hour") {
  CHECK(tests::read(small_zine("  labour $12 a copy\n", "")).found() ==
        "error almanac.bodkin:7:10 priced-by-what\n"
        "note almanac.bodkin:12:7 unused-paper\n");
}

} // namespace bodkin::tests
