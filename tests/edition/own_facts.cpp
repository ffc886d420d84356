#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

TEST_CASE("what an edition does not say has its default, and the model says that it is one") {
  const Read r = read(small_edition("", "page 1\n"));
  const Edition &edition = r.edition();
  CHECK(*edition.languages.at(0) == "en");
  CHECK(edition.languages[0].by_default());
  CHECK(edition.folding->name == "saddle-stitch");
  CHECK(edition.folding.by_default());
  CHECK(*edition.printing == Mode::black);
  CHECK(edition.run->spare == 0);
  CHECK(edition.margins->outer == Length::inches(1, 2));
  CHECK(edition.margins.by_default());
  CHECK(*edition.marks);
  CHECK_FALSE(edition.grid);
  CHECK_FALSE(edition.budget);
  const Machine &machine = edition[*edition.machine];
  CHECK_FALSE(*machine.blank_charged);
  CHECK_FALSE(*machine.modes_apart);
  CHECK(*machine.flip == SheetEdge::short_edge);
  CHECK(*machine.resolution == 600);
}

TEST_CASE("margins are one width or four") {
  const Read r =
      read(small_edition("margins inner 1/4in, outer 1/2in, head 3/8in, foot 5/8in", "page 1\n"));
  CHECK(r.edition().margins->inner == Length::inches(1, 4));
  CHECK(r.edition().margins->foot == Length::inches(5, 8));
  const Read meet = read(small_edition("margins 3in", "page 1\n"));
  CHECK(meet.found() == "error almanac.bodkin:6:3 margins-meet\n");
}

TEST_CASE("a dollar sign means the dollars that the edition counts in") {
  const Read r = read(small_edition("currency CAD", "page 1\n"));
  CHECK(r.edition().currency->code() == "CAD");
  CHECK(r.edition().stocks[0].costs->value.price.currency.code() == "CAD");
  CHECK(r.edition().machines[0].prints[0].rate.price.currency.code() == "CAD");
  const Read pounds = read(small_edition("currency GBP", "page 1\n"));
  CHECK(pounds.edition().stocks[0].costs->value.price.currency.code() == "USD");
}

TEST_CASE("without a currency, the budget's counts, then the price's, then the first paper's") {
  CHECK(read(small_edition("budget £3 a copy", "page 1\n")).edition().currency->code() == "GBP");
  CHECK(read(small_edition("price €3 a copy", "page 1\n")).edition().currency->code() == "EUR");
  CHECK(read(small_edition("", "page 1\n")).edition().currency->code() == "USD");
}

TEST_CASE("a paper that the edition is not printed on does not say what it counts in") {
  std::string text = small_edition("", "stock metric\n  weight 80 gsm\n  sheet a4, grain long\n"
                                       "  costs £4 per 500 sheets\npage 1\n");
  constexpr std::string_view paper = "paper plain";
  text.replace(text.find(paper), paper.size(), "paper metric");
  CHECK(read(text).edition().currency->code() == "GBP");
}

TEST_CASE("a budget is for a copy or for the run") {
  const Read r = read(small_edition("budget $60 a run", "page 1\n"));
  CHECK(r.found().empty());
  CHECK(r.edition().budget->value.of_run);
}

TEST_CASE("cards for the table are a count, and want a price to tell") {
  CHECK(**read(small_edition("price $5 a copy\ncards 8", "page 1\n")).edition().cards == 8);
  const Read free = read(small_edition("cards 8", "page 1\n"));
  CHECK(free.found() == "error almanac.bodkin:6:3 cards-without-price\n");
  CHECK_FALSE(free.edition().cards);
  const Read none = read(small_edition("price $5 a copy\ncards 0", "page 1\n"));
  CHECK(none.problems.at(0).message == "0 is too few; the least is 1");
  const Read many = read(small_edition("price $5 a copy\ncards 1001", "page 1\n"));
  CHECK(many.problems.at(0).message ==
        "1001 cards are more than any table holds; 1000 is the most");
  CHECK_FALSE(many.edition().cards);
}

TEST_CASE("of cards beside a price with a slip in it nothing more is said") {
  const Read r = read(small_edition("price 5\ncards 8", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:6:9 no-unit\n");
}

TEST_CASE("a folding is one's own, or the shelf's without being borrowed") {
  const Read shelf = read(small_edition("folding section-8", "page 1\n"));
  CHECK(shelf.found().empty());
  CHECK(shelf.edition().folding->columns == 2);
  CHECK(shelf.edition().folding->rows == 2);
  const Read own = read(small_edition("folding mine", "folding mine\n  sheet letter, upright\n"
                                                      "  sheets 1\n  panels 1 by 2\n"
                                                      "  fold top under bottom\npage 1\n"));
  CHECK(own.found().empty());
  const Folding &folding = *own.edition().folding;
  CHECK_FALSE(folding.across);
  CHECK(**folding.sheets == 1);
  REQUIRE(folding.steps.size() == 1);
  CHECK(folding.steps[0].moving == Part::top);
  CHECK(folding.steps[0].under);
  CHECK(*folding.gather == Gather::one_after_another);
}

TEST_CASE("a folding that nobody knows is named with the nearest, and saddle stitch stands in") {
  const Read r = read(small_edition("folding sadle-stitch", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:6:11 unknown-name\n");
  CHECK(r.problems[0].message == "no folding is called sadle-stitch; did you mean saddle-stitch?");
  CHECK(r.problems[0].type[0].line == "folding saddle-stitch");
  CHECK(r.edition().folding->name == "saddle-stitch");
}

TEST_CASE("a half of the paper folds onto the half across from it") {
  const Read r = read(small_edition("folding mine", "folding mine\n  panels 2 by 1\n"
                                                    "  fold left over top\npage 1\n"));
  CHECK(r.found() == "error almanac.bodkin:21:3 folding-cannot-be\n");
  CHECK(r.problems[0].message == "the left half comes to lie on the right half and on no other");
  CHECK(r.problems[0].type[0].line == "fold left over right");
}

TEST_CASE("a folding is known by a part of its name, and folds as it was meant") {
  const Read r = read(small_edition("folding mini", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:6:11 unknown-name\n");
  CHECK(r.problems[0].message == "no folding is called mini; did you mean eight-page-mini?");
  CHECK(r.problems[0].type[0].line == "folding eight-page-mini");
  CHECK(r.edition().folding->name == "eight-page-mini");
  CHECK_FALSE(r.edition().folding_guessed);
  CHECK(read(small_edition("folding eight-page-mini", "page 1\n")).found() == "");
}

TEST_CASE("where nobody knows what folding was meant, none is handed out") {
  const Read r = read(small_edition("folding umbrella", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:6:11 unknown-name\n");
  CHECK(r.problems[0].message == "no folding is called umbrella");
  CHECK(r.problems[0].type.empty());
  CHECK(r.edition().folding_guessed);
}

TEST_CASE("a paper's name in capitals is the paper, and nothing follows from the slip") {
  std::string text = small_edition("", "page 1\n");
  text.replace(text.find("half-letter"), 11, "A5");
  const Read r = read(text);
  CHECK(r.found() == "error almanac.bodkin:2:8 unknown-kind\n");
  CHECK(r.problems[0].message == "names are written small: a5");
  CHECK(r.problems[0].type[0].line == "size a5");
  CHECK(r.edition().size->width == Length::mm(148));
  CHECK_FALSE(r.edition().size_guessed);
}

TEST_CASE("lengths are spoken in the units that the size is typed in") {
  std::string text = small_edition("", "page 1\n");
  text.replace(text.find("half-letter"), 11, "71.08mm x 210mm");
  CHECK(read(text).edition().ruler == Ruler::millimetres);
  text.replace(text.find("71.08mm x 210mm"), 15, "5in x 8in");
  CHECK(read(text).edition().ruler == Ruler::inches);
  text.replace(text.find("5in x 8in"), 9, "a5");
  CHECK(read(text).edition().ruler == Ruler::millimetres);
}

TEST_CASE("an edition without a size is handed one in the units of its maker") {
  std::string text = small_edition("", "page 1\n  patch\n    at 1in 1in, 1in x 1in\n");
  text.erase(text.find("  size half-letter\n"), 19);
  const Read inches = read(text);
  REQUIRE(inches.problem("missing-fact"));
  CHECK(inches.problem("missing-fact")->type[0].line == "size       half-letter");
  CHECK(inches.edition().size_guessed);
  text.replace(text.find("bare 1/4in"), 10, "bare 6mm");
  text.replace(text.find("at 1in 1in, 1in x 1in"), 21, "at 9mm 9mm, 20mm x 20mm");
  CHECK(read(text).problem("missing-fact")->type[0].line == "size       a5");
}
