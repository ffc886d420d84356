#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

constexpr std::string_view almanac = R"(borrow "stocks/us"
borrow "machines/copy-shop"

edition "Night Bus Almanac"
  number     4
  dated      2026-11
  maker      "Wet Umbrella Press"
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
  copies     25 at $2.10 a copy
  copies     1 at $3.10 a copy
  postage    $7.50 once

face poster from "Bebas Neue"
face book from "EB Garamond"
face typed from "Courier Prime"

style masthead
  face       poster 64/58
  lines      centred

style body
  face       book 10.5/13
  lines      justified

style label
  face       typed 9/11
  lines      centred

source harbour-card
  title      "Harbour at night, picture postcard"
  published  1907, US
  kept-by    "Town museum"
  rights     public-domain
  credit     "Postcard, 1907. Town museum."

text timetable from "words/timetable.md"

standing imprint
  patch
    at       0in 0in, 1.8in x 0.4in
    outline  1pt black
  words "WET UMBRELLA PRESS" in label
    at       0.1in 0.08in, 1.6in x 0.3in

page 1 in colour
  picture "art/shelter.png"
    fills    live
    describe "A lit bus shelter on an empty road"
  words "NIGHT BUS ALMANAC" in masthead
    at       0.5in 0.5in, 4.5in x 1.8in
    turn     -3deg
  hand stamp "lino moon"
    at       3.8in 6.6in, 1.2in x 1.2in
    takes    20 s a copy
    costs    $6.50 once
    caution  "Cut lino away from the hand that holds it."

page 2
  picture "art/harbour.png"
    at       3/8in 3/8in, 4.75in x 4in
    source   harbour-card
    describe "A harbour with three boats"
  words of timetable in body
    at       3/8in 4.6in, 4.75in x 3.5in
    columns  2, gap 1/4in

page 3
  words of timetable in body

page 4 on rose
  words in body
    says
      # Lost property

      One glove, *left*, wool. **Three** umbrellas.
      A jar of quince, the label gone.

page 8
  lay imprint at 1.85in 7.4in

finish
  crease     cover
  fold       all
  staple     2, leg 1/4in, 2 1/8in from head and foot
  trim       fore-edge 1/8in
)";

Read read_almanac() {
  return read(almanac, {{"art/shelter.png", "picture"},
                        {"art/harbour.png", "picture"},
                        {"words/timetable.md", "Last bus: 1:10."}});
}

} // namespace

TEST_CASE("a whole edition is read without a word of complaint") {
  const Read almanac_read = read_almanac();
  CHECK(almanac_read.found().empty());
}

TEST_CASE("an edition's own facts stand in the model, with the words that they come from") {
  const Read r = read_almanac();
  const Edition &edition = r.edition();
  CHECK(*edition.title == "Night Bus Almanac");
  CHECK(**edition.number == "4");
  CHECK(**edition.dated == Date{2026, 11, 0});
  CHECK(edition.languages.size() == 1);
  CHECK(*edition.languages.front() == "en-GB");
  CHECK(*edition.size == Size{Length::inches(11, 2), Length::inches(17, 2)});
  CHECK(*edition.page_count == 8);
  CHECK(edition.run->copies == 50);
  CHECK(edition.run->spare == 3);
  CHECK(edition[*edition.paper].name == "cream");
  CHECK(edition[**edition.cover_stock].name == "board");
  CHECK(edition[*edition.machine].name == "corner-copier");
  CHECK(edition.margins->inner == Length::inches(3, 8));
  CHECK(written(edition.budget->value.limit) == "$1.40");
  CHECK_FALSE(edition.budget->value.of_run);
  CHECK(written(**edition.price) == "$5.00");
  CHECK(edition.currency->code() == "USD");
  CHECK(r.sources->text(edition.paper.from) == "cream");
  CHECK(origin_words(edition.paper.from, *r.sources) == "almanac.bodkin:12");
}

TEST_CASE("the model says what came from the shelf and what is a default") {
  const Read r = read_almanac();
  const Edition &edition = r.edition();
  CHECK(edition.folding->columns == 2);
  CHECK(*edition.folding->gather == Gather::nested);
  CHECK(origin_words(edition.folding->range, *r.sources) ==
        "stdlib/foldings/saddle-stitch.bodkin:3");
  CHECK(origin_words(edition[*edition.machine].flip.from, *r.sources) == "default");
  CHECK(edition.marks.by_default());
}

TEST_CASE("a paper says what is at hand, what it is cut from, what it hides and its sides") {
  const Read r = read(small_edition("pages 4", "page 1-4\n"
                                               "stock large like plain\n"
                                               "  have 140 sheets\n"
                                               "  cut-from 17in x 11in, 2 out\n"
                                               "  opacity 88%\n"
                                               "  sides 1\n"));
  const Stock &large = r.edition().stocks.back();
  CHECK(**large.have == 140);
  CHECK((*large.cut_from)->parent == Size{Length::inches(11), Length::inches(17)});
  CHECK((*large.cut_from)->out == 2);
  CHECK((*large.opacity)->millionths == 880'000);
  CHECK(*large.one_side);
  CHECK_FALSE(*r.edition().stocks.front().one_side);
}

TEST_CASE("paper has one side to print on or two") {
  const auto sides = [](std::string_view count) {
    return read(small_edition("pages 4", "page 1-4\nstock odd like plain\n  sides " +
                                             std::string(count) + "\n"))
        .found();
  };
  CHECK(sides("2").find("error") == std::string::npos);
  CHECK(sides("3").find("number-too-big") != std::string::npos);
  CHECK(sides("0").find("number-too-small") != std::string::npos);
}

TEST_CASE("a stock that is like another keeps what it does not replace") {
  const Read r = read_almanac();
  const Stock &rose = r.edition().stocks[1];
  CHECK(rose.name == "rose");
  CHECK(written(**rose.weight) == "20 lb bond");
  CHECK(*rose.grain == Grain::along_short_edge);
  CHECK(origin_words(rose.grain.from, *r.sources) == "almanac.bodkin:22");
  CHECK(*rose.caliper == Length::inches(38, 10'000));
  CHECK(r.edition().stocks[2].caliper_estimated);
}

TEST_CASE("the steps of a bid come in the order of their copies") {
  const Read r = read_almanac();
  const Bid &bid = r.edition().bids.front();
  REQUIRE(bid.steps.size() == 2);
  CHECK(bid.steps[0].from_copies == 1);
  CHECK(written(bid.steps[0].rate) == "$3.10 a copy");
  CHECK(bid.steps[1].from_copies == 25);
}

TEST_CASE("pages hold their elements in order, and unnamed pages hold nothing") {
  const Read r = read_almanac();
  const Edition &edition = r.edition();
  REQUIRE(edition.pages[1].elements.size() == 3);
  CHECK(name_of(edition[edition.pages[1].elements[0]]) == "picture");
  CHECK(name_of(edition[edition.pages[1].elements[1]]) == "words");
  CHECK(name_of(edition[edition.pages[1].elements[2]]) == "hand");
  CHECK(*edition.pages[1].mode == Mode::colour);
  CHECK(*edition.pages[2].mode == Mode::black);
  CHECK(edition[*edition.pages[4].asked.stock.value()].name == "rose");
  CHECK_FALSE(edition.pages[5].opened.somewhere());
  CHECK(edition.pages[5].elements.empty());
}

TEST_CASE("hand work keeps its time, money and caution") {
  const Read r = read_almanac();
  const Element &stamp = r.edition()[r.edition().pages[1].elements[2]];
  CHECK(std::get<Hand>(stamp.what).kind == HandKind::stamp);
  CHECK(std::get<Hand>(stamp.what).text == "lino moon");
  CHECK(stamp.work.takes->value.time.milliseconds == 20'000);
  REQUIRE(stamp.work.costs.size() == 1);
  CHECK(written(*stamp.work.costs[0]) == "$6.50 once");
}

TEST_CASE("finish keeps the order of its lines") {
  const Read r = read_almanac();
  const std::vector<FinishStep> &steps = r.edition().finish;
  REQUIRE(steps.size() == 4);
  CHECK(steps[0].kind == StepKind::crease);
  CHECK_FALSE(steps[0].all);
  CHECK(steps[2].staples == 2);
  CHECK(steps[2].leg == Length::inches(1, 4));
  CHECK(steps[2].from_head_and_foot == Length::inches(17, 8));
  CHECK(steps[3].fore_edge == Length::inches(1, 8));
}

TEST_CASE("every file that was read, or is there to be read, is listed once") {
  const Read r = read_almanac();
  std::string list;
  for (const FileRead &file : r.reading.files)
    list += file.path + "\n";
  CHECK(list == "almanac.bodkin\n"
                "stdlib/stocks/us.bodkin\n"
                "stdlib/machines/copy-shop.bodkin\n"
                "fonts/catalogue.bodkin\n"
                "stdlib/foldings/saddle-stitch.bodkin\n"
                "words/timetable.md\n"
                "art/shelter.png\n"
                "art/harbour.png\n");
}
