// Paper, work by hand, finish and fees.
#include "money/bill.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

// A shop whose printing is free, so that only what a test adds costs anything.
Shop free_printing(int sheets, std::int64_t copies, std::int64_t spare = 0) {
  Shop shop(sheets, copies);
  shop.edition.run.value.spare = spare;
  for (ChargedSide &side : shop.sides)
    side.printed = false;
  return shop;
}

} // namespace

TEST_CASE("paper is charged by the sheet used and bought by the pack") {
  Shop shop = free_printing(3, 100, 1);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("10", Per::sheets, 300), {}};
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "303 × 0.033333333333 = 10.10 plain sheets (paper)\n");
  CHECK(estimate.run_total == Exact::ratio(101, 10));
  CHECK(estimate.purse_total == Exact(20));
}

TEST_CASE("a pack that is just used up is one pack") {
  Shop shop = free_printing(3, 100);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("10", Per::sheets, 300), {}};
  CHECK(shop.priced().purse_total == Exact(10));
}

TEST_CASE("paper sold by the sheet is bought by the sheet") {
  Shop shop = free_printing(1, 10);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("0.05", Per::sheet), {}};
  CHECK(lines(shop.priced()) == "10 × 0.05 = 0.50 plain sheets (paper)\n");
  CHECK(shop.priced().purse_total == shop.priced().run_total);
}

TEST_CASE("only what is missing is bought, and what is used is charged all the same") {
  Shop shop = free_printing(1, 159);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("4", Per::sheets, 10), {}};
  shop.paper().have = Known<std::int64_t>{140, {}};
  const Estimate estimate = shop.priced();
  CHECK(estimate.run_total == Exact::ratio(636, 10));
  REQUIRE(estimate.purchases.size() == 1);
  CHECK(estimate.purchases[0].missing() == 19);
  CHECK(estimate.purchases[0].packs() == 2);
  CHECK(estimate.purse_total == Exact(8));
  shop.paper().have = Known<std::int64_t>{200, {}};
  CHECK(shop.priced().purse_total == Exact(0));
  CHECK(shop.priced().run_total == Exact::ratio(636, 10));
}

TEST_CASE("a cut paper is charged its share of the larger sheet and bought in whole ones") {
  Shop shop = free_printing(1, 5);
  shop.paper().included = false;
  shop.paper().costs = Known<Rate>{rate("0.30", Per::sheet), {}};
  shop.paper().cut_from = Known<CutFrom>{CutFrom{*paper_named("tabloid"), 2}, {}};
  CHECK(lines(shop.priced()) == "5 × 0.15 = 0.75 plain sheets (paper)\n");
  CHECK(shop.priced().purchases[0].bought() == 3);
  CHECK(shop.priced().purse_total == Exact::ratio(9, 10));
  shop.paper().costs = Known<Rate>{rate("10", Per::sheets, 2), {}};
  CHECK(shop.priced().run_total == Exact::ratio(25, 2));
  CHECK(shop.priced().purse_total == Exact(20));
}

TEST_CASE("paper that the side's price includes makes no line") {
  CHECK(lines(free_printing(1, 10).priced()) == "");
}

TEST_CASE("a paper without a price is left out and told") {
  Shop shop = free_printing(2, 10, 1);
  shop.paper().included = false;
  const Estimate estimate = shop.priced();
  REQUIRE(estimate.unpriced.size() == 1);
  CHECK(estimate.unpriced[0].what == "plain sheets");
  CHECK(estimate.unpriced[0].quantity == 22);
}

TEST_CASE("hand matter a copy counts copies and spares; signatures and numbers good copies only") {
  Shop shop = free_printing(1, 10, 2);
  for (const HandKind kind : {HandKind::sticker, HandKind::signature, HandKind::number}) {
    Element &matter = shop.on_page(1, hand(kind, "x"));
    matter.work.costs = {{rate("0.10", Per::copy), {}}};
    matter.work.takes = Known<Takes>{takes(60, TimePer::copy), {}};
  }
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "12 × 0.10 = 1.20 sticker x (hand)\n"
                           "10 × 0.10 = 1.00 signature x (hand)\n"
                           "10 × 0.10 = 1.00 number x (hand)\n");
  CHECK(estimate.minutes == Exact(32));
}

TEST_CASE("a paste-up is work by hand on the original, once a run") {
  Shop shop = free_printing(2, 10);
  Element glued;
  glued.what = PasteUp{"ticket stub"};
  Element &stub = shop.on_page(3, glued);
  stub.work.takes = Known<Takes>{takes(300, TimePer::once), {}};
  stub.work.costs = {{rate("1", Per::once), {}}};
  const Estimate estimate = shop.priced();
  CHECK(lines(estimate) == "1 × 1.00 = 1.00 paste-up ticket stub (hand)\n");
  CHECK(estimate.minutes == Exact(5));
}

TEST_CASE("what a page list repeats is bought once and put on every page") {
  Shop shop = free_printing(2, 10);
  Element &moon = shop.on_page(1, hand(HandKind::stamp, "moon"));
  moon.work.costs = {{rate("6.50", Per::once), {}},
                     {rate("0.02", Per::each), {}},
                     {rate("0.10", Per::sheet), {}},
                     {rate("0.01", Per::side), {}}};
  for (const std::size_t page : {7U, 8U})
    shop.edition.pages[page].elements.push_back(ElementId{0});
  // Pages 1 and 8 are the front of the outer sheet, page 7 is on its back.
  CHECK(lines(shop.priced()) == "1 × 6.50 = 6.50 stamp moon (hand)\n"
                                "30 × 0.02 = 0.60 stamp moon (hand)\n"
                                "10 × 0.10 = 1.00 stamp moon (hand)\n"
                                "20 × 0.01 = 0.20 stamp moon (hand)\n");
}

TEST_CASE("standing matter is worked on wherever it is laid") {
  Shop shop = free_printing(1, 10);
  Standing imprint;
  imprint.elements = {ElementId{0}};
  shop.edition.standings.push_back(imprint);
  Element sticker = hand(HandKind::sticker, "moon");
  sticker.work.costs = {{rate("0.03", Per::each), {}}};
  shop.edition.elements.push_back(sticker);
  Element lay;
  lay.what = Lay{StandingId{0}, {}, {}};
  shop.on_page(1, lay);
  shop.on_page(2, lay);
  CHECK(lines(shop.priced()) == "20 × 0.03 = 0.60 sticker moon (hand)\n");
}

TEST_CASE("standing matter that lays itself comes to an end") {
  Shop shop = free_printing(1, 10);
  Standing loop;
  loop.elements = {ElementId{0}, ElementId{0}};
  shop.edition.standings.push_back(loop);
  Element lay;
  lay.what = Lay{StandingId{0}, {}, {}};
  shop.on_page(1, lay);
  CHECK(lines(shop.priced()) == "");
}

TEST_CASE("a step of finish is timed by copies, by sheets or once") {
  Shop shop = free_printing(3, 10, 2);
  FinishStep crease, fold, trim;
  crease.kind = StepKind::crease;
  crease.all = false;
  crease.work.takes = Known<Takes>{takes(60, TimePer::sheet), {}};
  fold.kind = StepKind::fold;
  fold.work.takes = Known<Takes>{takes(60, TimePer::sheet), {}};
  fold.work.costs = {{rate("0.01", Per::sheet), {}}};
  trim.kind = StepKind::trim;
  trim.work.takes = Known<Takes>{takes(300, TimePer::once), {}};
  trim.work.costs = {{rate("12", Per::hour), {}}};
  shop.edition.finish = {crease, fold, trim};
  const Estimate estimate = shop.priced();
  CHECK(estimate.minutes == Exact(12 + 36 + 5));
  CHECK(lines(estimate) == "36 × 0.01 = 0.36 fold (finish)\n"
                           "0.083333 × 12.00 = 1.00 trim (finish)\n");
}

TEST_CASE("the fee of a source that is used is paid once, however often it is shown") {
  Shop shop = free_printing(1, 10);
  ArtSource used, unused;
  used.name = "harbour-card";
  used.costs = Known<Rate>{rate("4", Per::once), {}};
  unused.name = "other";
  unused.costs = used.costs;
  shop.edition.sources = {used, unused};
  Element picture;
  picture.what = Picture{};
  picture.source = Known<SourceId>{SourceId{0}, {}};
  shop.on_page(1, picture);
  shop.on_page(2, picture);
  CHECK(lines(shop.priced()) == "1 × 4.00 = 4.00 harbour-card (other)\n");
}

TEST_CASE("a text's source is paid once too, through however many boxes and pages it runs") {
  Shop shop = free_printing(1, 10);
  ArtSource poem;
  poem.name = "poem";
  poem.costs = Known<Rate>{rate("7.50", Per::once), {}};
  shop.edition.sources = {poem};
  Text text;
  text.name = "verses";
  text.source = Known<SourceId>{SourceId{0}, {}};
  shop.edition.texts = {text};
  Element words;
  words.what = Words{};
  std::get<Words>(words.what).words = TextId{0};
  shop.on_page(1, words);
  shop.on_page(2, words);
  CHECK(lines(shop.priced()) == "1 × 7.50 = 7.50 poem (other)\n");
}

TEST_CASE("a source that asks so much a copy is paid for every copy printed, not for every place") {
  Shop shop = free_printing(1, 10, 2);
  ArtSource card;
  card.name = "harbour-card";
  card.costs = Known<Rate>{rate("0.05", Per::copy), {}};
  shop.edition.sources = {card};
  Element picture;
  picture.what = Picture{};
  picture.source = Known<SourceId>{SourceId{0}, {}};
  shop.on_page(1, picture);
  shop.on_page(1, picture);
  CHECK(lines(shop.priced()) == "12 × 0.05 = 0.60 harbour-card (other)\n");
}

TEST_CASE("the budget is held against the unrounded figure") {
  Shop shop(1, 3);
  shop.machine().prints = {side_price(Mode::black, "0.1402")};
  shop.edition.budget = Known<Budget>{{dollars("0.28"), false}, {}};
  CHECK(shop.priced().per_copy.rounded(2) == "0.28");
  CHECK(shop.priced().budget->over);
  shop.edition.budget = Known<Budget>{{dollars("0.2804"), false}, {}};
  CHECK_FALSE(shop.priced().budget->over);
}

TEST_CASE("a budget of the run is held against the run") {
  Shop shop(1, 10);
  shop.edition.budget = Known<Budget>{{dollars("2.79"), true}, {}};
  CHECK(shop.priced().budget->over);
  CHECK(shop.priced().budget->over_by == Exact::ratio(1, 100));
}

} // namespace bodkin::tests
