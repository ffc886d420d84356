// A whole manuscript, from its text to its estimate: the sample edition, with the words that its
// pages 2 and 5 would have written plainly. The figures were worked out on paper beforehand.
#include "money/manuscript.hpp"
#include "money/report.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

constexpr std::string_view night_bus = R"(edition "Night Bus Almanac"
  number     4
  dated      2026-11
  language   en-GB
  size       half-letter
  folding    saddle-stitch
  run        50 copies, 3 spare
  paper      cream
  cover      on board
  printing   black
  machine    corner-copier
  margins    3/8in
  budget     $1.40 a copy
  price      $5 a copy

stock cream
  weight     28 lb bond
  sheet      letter, grain short
  tint       #f7f1e1
  caliper    0.0058in
  costs      $18.50 per 500 sheets

stock rose like cream
  weight     20 lb bond
  tint       #f3b3c0
  caliper    0.0038in
  costs      $11.90 per 500 sheets

stock board
  weight     65 lb cover
  sheet      letter, grain short
  costs      $14.75 per 250 sheets

machine corner-copier "Copier at the corner shop"
  prints     black at $0.12 a side
  prints     colour at $0.59 a side
  sizes      letter, legal, tabloid
  bare       1/4in
  feeds      16 lb bond to 110 lb index
  duplex     by machine, drift 1/16in
  resolution 600 dpi

bid mail-order "Mail-order booklet printer"
  prints     colour
  copies     1 at $3.10 a copy
  copies     25 at $2.10 a copy
  copies     100 at $0.95 a copy
  postage    $7.50 once

face typed from "Courier Prime"

style label
  face       typed 9/11

page 1 in colour
  words "NIGHT BUS ALMANAC" in label
  hand stamp "lino moon"
    at       3.8in 6.6in, 1.2in x 1.2in
    takes    20 s a copy
    costs    $6.50 once

page 2
  words "The 23:10" in label

page 3
  words "The 00:40" in label

page 4 on rose
  words "Lost property" in label

page 5 on rose
  words "Who waits here?" in label

page 8
  words "Wet umbrella press" in label

finish
  crease     cover
  fold       all
  staple     2, leg 1/4in, 2 1/8in from head and foot
  trim       fore-edge 1/8in
)";

} // namespace

TEST_CASE("the sample's manuscript comes to the figures that were worked out on paper") {
  const Priced almanac = priced(night_bus);
  CHECK(estimate_as_json(almanac.estimate, almanac.sources()) ==
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
    {"what": "colour sides at corner-copier", "group": "printing", "quantity": 53, "rate": "0.59", "total": "31.27", "from": "almanac.bodkin:36"},
    {"what": "black sides at corner-copier", "group": "printing", "quantity": 159, "rate": "0.12", "total": "19.08", "from": "almanac.bodkin:35"},
    {"what": "board sheets", "group": "paper", "quantity": 53, "rate": "0.059", "total": "3.13", "from": "almanac.bodkin:32"},
    {"what": "rose sheets", "group": "paper", "quantity": 53, "rate": "0.0238", "total": "1.26", "from": "almanac.bodkin:27"},
    {"what": "stamp lino moon", "group": "hand", "quantity": 1, "rate": "6.50", "total": "6.50", "from": "almanac.bodkin:60"}
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
  CHECK(
      almanac.price_problems_text() ==
      R"(almanac.bodkin:7:3: note: 100 copies from mail-order cost $102.50, less than the $112.50 of 50 [cheap-run]
  run        50 copies, 3 spare
  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~
  why   a lower price begins at 100 copies and holds for every one of them
  type  run        100 copies, 3 spare      (if you order there)
)");
  CHECK(almanac.over_budget_text() == "");
}

TEST_CASE("each line of the report names the line of the manuscript that holds its price") {
  const Priced almanac = priced(night_bus);
  const std::string text =
      estimate_as_text(almanac.edition(), almanac.estimate, almanac.sources(), false);
  CHECK(text.substr(0, text.find("\n\n  the run")) == R"(Night Bus Almanac
50 copies and 3 spare: 53 printed. Money in USD.

  colour sides at corner-copier   53 ×   $0.59 = $31.27  almanac.bodkin:36
  black sides at corner-copier   159 ×   $0.12 = $19.08  almanac.bodkin:35
  board sheets                    53 ×  $0.059 =  $3.13  almanac.bodkin:32
  rose sheets                     53 × $0.0238 =  $1.26  almanac.bodkin:27
  stamp lino moon                  1 ×   $6.50 =  $6.50  almanac.bodkin:60)");
}

} // namespace bodkin::tests
