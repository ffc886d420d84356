// Plain and de luxe in one edition: what one run has alone is made and paid for its copies alone.
#include "money/charge.hpp"
#include "money/manuscript.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

// Forty plain copies and ten de luxe with two spares: a signature, thread and a card more.
std::string two_runs(std::string_view more = "") {
  std::string text = small_zine("", "stock half like plain\n  sheet      half-letter\n",
                                std::string("page 1-7\n  words \"Rain\" in label\n"
                                            "page 8\n  words \"Rain\" in label\n"
                                            "  hand signature \"the maker\"\n"
                                            "    only     de-luxe\n"
                                            "    takes    30 s a copy\n"
                                            "    costs    $0.20 a copy\n"
                                            "insert card \"A card\"\n"
                                            "  size       half-letter\n"
                                            "  folding    flat\n"
                                            "  paper      half\n"
                                            "  only       de-luxe\n"
                                            "  page 1\n    words \"Card\" in label\n"
                                            "finish\n"
                                            "  fold       all\n"
                                            "  staple     2, leg 1/4in, 2in from head and foot\n"
                                            "    only     plain\n"
                                            "    costs    $0.01 a copy\n"
                                            "  tie        \"with thread\"\n"
                                            "    only     de-luxe\n"
                                            "    costs    $0.50 a copy\n") +
                                    std::string(more));
  text.replace(text.find("  run        50 copies\n"), 23,
               "  run        40 copies called plain\n"
               "  run        10 copies, 2 spare called de-luxe\n");
  return text;
}

// Priced with its card drawn, which stands after the eight pages of the book.
Priced with_card(const std::string &manuscript) {
  Priced of = priced(manuscript);
  of.draws = {false, true, true, true, true, true, true, true, true, true, false};
  of.laid = lay(of.edition(), of.draws, of.sources());
  of.estimate = estimate(of.edition(), of.laid.imposition, of.laid.sides);
  return of;
}

} // namespace

TEST_CASE("no offer leads where the edition could not be so small, for its other run is made") {
  const Priced of = with_card(two_runs("bid near\n  prints black\n  copies 1 at $3 a copy\n"));
  CHECK(of.estimate.cheapest_at_one_copy == "own");
  CHECK(of.estimate.crossings.empty());
}

TEST_CASE("a pass that one run alone needs is set up for that run's copies") {
  std::string text = two_runs();
  text.replace(text.find("machine copier\n"), 15, "machine copier\n  setup      $10 a pass\n");
  const Priced of = with_card(text);
  CHECK(lines(of.estimate)
            .find("1 × 10.00 = 10.00 setup at copier (printing)\n"
                  "1 × 10.00 = 10.00 setup at copier, de-luxe alone (printing)\n") !=
        std::string::npos);
  REQUIRE(of.estimate.runs.size() == 2);
  // Derived: the common 20.80 and 10.00 over 50 copies, 0.01 for a plain one's staple; 1.20, 10.00,
  // 2.00 and 6.00 over the ten de luxe.
  CHECK(of.estimate.runs[0].per_copy == Exact::ratio(3080, 5000) + Exact::ratio(1, 100));
  CHECK(of.estimate.runs[1].per_copy == Exact::ratio(3080, 5000) + Exact::ratio(1920, 1000));
}

TEST_CASE("what one run has alone is counted for its copies, good ones where only these are made") {
  const Priced of = with_card(two_runs());
  CHECK(lines(of.estimate) == "208 × 0.10 = 20.80 black sides at copier (printing)\n"
                              "12 × 0.10 = 1.20 black sides at copier, de-luxe alone (printing)\n"
                              "10 × 0.20 = 2.00 signature the maker, de-luxe alone (hand)\n"
                              "40 × 0.01 = 0.40 staple, plain alone (finish)\n"
                              "12 × 0.50 = 6.00 tie, de-luxe alone (finish)\n");
  CHECK(of.estimate.minutes == Exact(5));
  REQUIRE(of.estimate.runs.size() == 2);
  CHECK(of.estimate.runs[0].per_copy == Exact::ratio(2080, 5000) + Exact::ratio(1, 100));
  CHECK(of.estimate.runs[1].per_copy == Exact::ratio(2080, 5000) + Exact::ratio(92, 100));
}

TEST_CASE("what is done on a piece is done for the copies that hold it") {
  std::string of = two_runs();
  const std::string_view card = "    words \"Card\" in label\n";
  of.insert(of.find(card) + card.size(), "    hand stamp \"a star\"\n      costs $0.10 a copy\n");
  CHECK(lines(priced(of).estimate).find("12 × 0.10 = 1.20 stamp a star, de-luxe alone (hand)\n") !=
        std::string::npos);
}

TEST_CASE("the first run grows with a longer edition, and the others stay what they are") {
  std::string of = two_runs();
  of.insert(of.find("page 1-7"), "bid near\n  copies 1 at $5 a copy\n");
  const Priced priced_of = with_card(of);
  // One more plain copy: four sides and a stapling.
  CHECK(priced_of.estimate.one_more_copy == Exact::ratio(41, 100));
  // Beside the bid: signing, tying and cards of ten good copies, and what one staples.
  CHECK(priced_of.estimate.bids[0].still_yours ==
        std::vector<std::string>{"signature the maker, de-luxe alone: $2.00, 5.0 min",
                                 "tie, de-luxe alone: $5.00", "card: $1.00"});
}

// Derived: two black sides of a cover in 40 and 5 copies, two in 10 and their 2 spares.
TEST_CASE("what two of three runs have alike is counted and paid for together, a copy for each") {
  std::string text = small_zine("  cover      on fine\n    only     de-luxe\n",
                                "stock fine like plain\n  costs $0.50 a sheet\n",
                                "page 1-8\n  words \"Rain\" in label\n");
  text.replace(text.find("  run        50 copies\n"), 23,
               "  run        40 copies called plain\n"
               "  run        10 copies, 2 spare called de-luxe\n"
               "  run        5 copies called gift\n");
  Priced of = priced(text);
  of.draws = std::vector<bool>(25, true);
  of.laid = lay(of.edition(), of.draws, of.sources());
  of.estimate = estimate(of.edition(), of.laid.imposition, of.laid.sides);
  CHECK(lines(of.estimate) == "90 × 0.10 = 9.00 black sides at copier, plain and gift alone "
                              "(printing)\n"
                              "114 × 0.10 = 11.40 black sides at copier (printing)\n"
                              "24 × 0.10 = 2.40 black sides at copier, de-luxe alone (printing)\n"
                              "12 × 0.50 = 6.00 fine sheets, de-luxe alone (paper)\n");
  REQUIRE(of.estimate.runs.size() == 3);
  const Exact inner = Exact::ratio(1140, 5500);
  CHECK(of.estimate.runs[0].per_copy == inner + Exact::ratio(900, 4500));
  CHECK(of.estimate.runs[1].per_copy == inner + Exact::ratio(840, 1000));
  CHECK(of.estimate.runs[2].per_copy == of.estimate.runs[0].per_copy);
  CHECK(of.estimate.one_more_copy == Exact::ratio(40, 100));
}

// Derived: the cards' twelve sheets, which no other copies use, come in one pack of a hundred.
TEST_CASE("what was paid for one run is held against its part of the packs that are bought") {
  std::string text = two_runs("");
  text.replace(text.find("stock half like plain\n"), 22,
               "stock half like plain\n  costs $30 per 100 sheets\n");
  const std::string_view machine = "  machine    copier\n";
  REQUIRE(text.find(machine) != std::string::npos);
  text.insert(text.find(machine), "  paid       $31 for paper\n    only     de-luxe\n");
  const Priced of = with_card(text);
  REQUIRE(of.estimate.paid.size() == 1);
  CHECK(of.estimate.paid[0].what == "paper, de-luxe alone");
  CHECK(of.estimate.paid[0].estimated == Exact(30));
}

TEST_CASE("a longer or shorter edition is typed as another first run") {
  const Read of = tests::read(two_runs());
  CHECK(in_first_run(of.edition(), 60) == 50);
  CHECK(in_first_run(of.edition(), 12) == 2);
  CHECK(in_first_run(of.edition(), 10) == 0);
  CHECK(of.sources->line_number(of.edition().run.from) ==
        of.sources->line_number(of.edition().runs.front().range));
}

TEST_CASE("a run without a name beside another, and a name that no run has, are told") {
  CHECK(tests::read(small_zine("  run 10 copies\n", "")).found() ==
        "error almanac.bodkin:7:3 same-fact-twice\n"
        "note almanac.bodkin:12:7 unused-paper\n");
  std::string of = two_runs();
  of.replace(of.find("only     plain"), 14, "only     plane");
  const Read read = tests::read(of);
  REQUIRE(read.problem("unknown-name"));
  CHECK(read.problem("unknown-name")->message == "no run is called plane");
}

} // namespace bodkin::tests
