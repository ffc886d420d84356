#include "money/manuscript.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// Of the bids of an edition that costs $0.40 a copy.
std::string zine(std::string_view more) { return small_zine("", more); }

const BidFigures &first(const Priced &of) { return of.estimate.bids.at(0); }

} // namespace

TEST_CASE("setup and postage come once, and tax is laid on the whole of a printer's bill") {
  const Priced of = priced(zine("bid near\n"
                                "  copies     1 at $2 a copy\n"
                                "  setup      $12 once\n"
                                "  postage    $8 once\n"
                                "  tax        5%\n"));
  CHECK(first(of).setup == Exact(12));
  CHECK(first(of).postage == Exact(8));
  CHECK(first(of).tax == Exact(6));
  CHECK(*first(of).run_total == Exact(126));
  CHECK(*first(of).per_copy == Exact::ratio(126, 50));
}

TEST_CASE("postage goes in steps, with nothing below the first") {
  const auto postage = [](int copies) {
    std::string of = zine("bid near\n"
                          "  copies     1 at $2 a copy\n"
                          "  postage    $5 once, from 10 copies\n"
                          "  postage    $9 once, from 50 copies\n");
    of.replace(of.find("50 copies"), 9, fmt::format("{} copies", copies));
    return first(priced(of)).postage;
  };
  CHECK(postage(9) == Exact(0));
  CHECK(postage(10) == Exact(5));
  CHECK(postage(49) == Exact(5));
  CHECK(postage(50) == Exact(9));
}

TEST_CASE("a printer that binds in fours adds blank pages, and one that binds fewer makes none") {
  const auto cannot = [](std::string_view rule) {
    return first(priced(zine(fmt::format("bid near\n"
                                         "  copies     1 at $0.10 a copy\n"
                                         "  pages      {}\n",
                                         rule))));
  };
  CHECK(cannot("8 to 64, by 4").cannot.empty());
  CHECK(cannot("by 16").cannot ==
        std::vector<std::string>{"8 pages: it binds 16, 8 of them blank"});
  CHECK(cannot("by 16").left_out.empty());
  CHECK(cannot("12 to 64").cannot ==
        std::vector<std::string>{"8 pages: it binds 12, 4 of them blank"});
  CHECK(cannot("2 to 6").cannot == std::vector<std::string>{"8 pages: it binds 6 at the most"});
  CHECK(cannot("2 to 6").left_out == "it binds 6 pages at the most, not 8");
}

TEST_CASE("papers that a printer has too are no lack") {
  const auto cannot = [](std::string_view papers) {
    return first(priced(small_zine("",
                                   fmt::format("bid near\n"
                                               "  copies     1 at $0.10 a copy\n"
                                               "{}",
                                               papers),
                                   "page 1-2\n  words \"Rain\" in label\n"
                                   "page 3 on rose\n  words \"Sun\" in label\n"
                                   "page 4-8\n  words \"Rain\" in label\n")))
        .cannot;
  };
  CHECK(cannot("") ==
        std::vector<std::string>{"a second paper, as far as it says (it names no `papers`): one "
                                 "stock throughout, where this edition has plain and rose",
                                 "coloured stock, as far as it says: rose"});
  CHECK(cannot("  papers     plain, rose\n").empty());
  CHECK(cannot("  papers     one of plain, rose\n") ==
        std::vector<std::string>{"a second paper: one stock throughout, where this edition has "
                                 "plain and rose"});
  CHECK(cannot("  papers     plain, ivory\n") ==
        std::vector<std::string>{"this paper: it has plain and ivory, not rose"});
}

TEST_CASE("what a printer cannot make beside the copies is told by what it is") {
  const Priced of = priced(
      small_zine("  counts     1-50\n",
                 "wrap on plain\n  page front-cover\n    words \"Rain\" in label\n"
                 "insert map \"Where it rained\"\n  size letter\n  folding single-fold\n  page 1\n"
                 "    words \"Rain\" in label\n"
                 "insert slip\n  goes round\n  height 2in\n  page 1\n    words \"Rain\" in label\n"
                 "bid near\n  papers plain\n  copies 500 at $0.10 a copy\n"
                 "finish\n  fold all\n  sew 3 holes, 1in from head and foot\n  pack\n",
                 "page 1-8\n  words in label\n    says \"Copy [1](fact:copy)\"\n"
                 "  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n"));
  CAPTURE(first(of).cannot.front());
  CHECK(first(of).cannot ==
        std::vector<std::string>{"what is beside the book: wrap, map (a fold-out) and slip (round "
                                 "the copy)",
                                 "a number of its own printed in each copy: pages 1 to 8",
                                 "hand work: stamp moon", "work after printing: sew and pack",
                                 "a run of 50: its prices begin at 500 copies"});
  CHECK(first(of).left_out.empty());
}

TEST_CASE("an offer without a price that counts is left out with the reason") {
  CHECK(first(priced(zine("bid near\n  prints black\n"))).left_out == "it names no price");
  CHECK(first(priced(zine("bid near\n  copies 1 at £2 a copy\n"))).left_out ==
        "a price of it is in other money, and no rate of exchange is written");
}

TEST_CASE("a printer that makes other sizes is compared with nothing") {
  const Priced of = priced(zine("bid near\n"
                                "  copies     1 at $0.10 a copy\n"
                                "  sizes      a5, letter\n"));
  CHECK(first(of).cannot == std::vector<std::string>{"this size: it makes a5 and letter, not "
                                                     "half-letter"});
  CHECK(of.estimate.cheapest_at_one_copy == "own");
  CHECK(of.estimate.crossings.empty());
}

TEST_CASE("an offer that ended before the edition's date is told and compared with nothing") {
  const auto of = [](std::string_view until) {
    return priced(zine(fmt::format("bid near\n"
                                   "  copies     1 at $0.10 a copy\n"
                                   "  until      {}\n",
                                   until)));
  };
  CHECK(of("2026-11").price_problems_text().empty());
  CHECK(of("2026-11-01").price_problems_text().empty());
  CHECK(first(of("2026-11")).until == "2026-11");
  const Priced ended = of("2026-10");
  CHECK(ended.price_problems_text() ==
        "almanac.bodkin:20:14: warning: this offer ended 2026-10, and the edition is dated "
        "2026-11 [offer-ended]\n"
        "  until      2026-10\n"
        "             ~~~~~~~\n"
        "  why   a price that no longer holds is listed, and compared with nothing\n"
        "  type  ask for a new offer, or take the bid out\n"
        "almanac.bodkin:3:14: note: the edition's date\n");
  CHECK(first(ended).left_out == "the offer ended 2026-10");
}

TEST_CASE("an offer without a price is told") {
  CHECK(priced(zine("bid near \"The near one\"\n  prints colour\n")).price_problems_text() ==
        "almanac.bodkin:18:1: warning: near names no price, so it is compared with nothing "
        "[empty-bid]\n"
        "  bid near \"The near one\"\n"
        "  ~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   an offer is what each copy costs, from a number of copies on\n"
        "  type  copies     50 at $… a copy      (below bid near)\n");
}

TEST_CASE("a step that rises is told, of bids and of machines") {
  const Priced of = priced(zine("bid near\n"
                                "  copies     1 at $2 a copy\n"
                                "  copies     100 at $20 a copy\n"));
  CHECK(of.price_problems_text() ==
        "almanac.bodkin:20:3: warning: from 100 copies on each costs $20.00, more than the $2.00 "
        "from 1 on [rising-price]\n"
        "  copies     100 at $20 a copy\n"
        "  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   prices fall as a run grows; a step that rises is often two lines changed about, "
        "or a point\n"
        "        left out\n"
        "  type  look at the price list again\n"
        "almanac.bodkin:19:3: note: $2.00 from 1 on\n");
}

TEST_CASE("a bid priced by the side, or twice from the same number of copies on, is an error") {
  const Read read = tests::read(zine("bid near\n"
                                     "  copies     1 at $0.05 a side\n"
                                     "  copies     25 at $2 a copy\n"
                                     "  copies     25 at $1 a copy\n"));
  CHECK(read.found() == "error almanac.bodkin:19:19 priced-by-what\n"
                        "error almanac.bodkin:21:3 same-fact-twice\n"
                        "note almanac.bodkin:11:7 unused-paper\n");
}

} // namespace bodkin::tests
