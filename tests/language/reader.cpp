#include "language/reading.hpp"
#include "language/recognise.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::language;

TEST_CASE("lines nest by their indentation, of any width, spaces or tabs") {
  const std::string wanted = "edition(size run) page(picture(at describe) patch) finish ";
  CHECK(Reading("edition \"Bus\"\n"
                "  size a5\n"
                "  run 5 copies\n"
                "\n"
                "page 2\n"
                "   picture \"a.png\"\n"
                "       at 1in 1in, a6\n"
                "       describe \"A bus\"\n"
                "   patch\n"
                "finish\n")
            .outline() == wanted);
  CHECK(Reading("edition \"Bus\"\r\n"
                "\tsize a5\r\n"
                "\trun 5 copies\r\n"
                "page 2\r\n"
                "\tpicture \"a.png\"\r\n"
                "\t\tat 1in 1in, a6\r\n"
                "\t\tdescribe \"A bus\"\r\n"
                "\tpatch\r\n"
                "finish")
            .outline() == wanted);
  CHECK(Reading("\xEF\xBB\xBF"
                "finish\n")
            .outline() == "finish ");
  CHECK(Reading("").outline() == "");
}

TEST_CASE("a comment follows white space and is followed by it, and never begins inside a text") {
  const Reading reading("# a remark\n"
                        "edition \"No # remark\" # a remark\n"
                        "   # another, anywhere\n"
                        "  size a5 #\n"
                        "#\n"
                        "stock cream\n"
                        "  tint #f6a5b8# no remark, and too much\n");
  CHECK(reading.tree.get<Quoted>(reading.tree.statements[0], "title")->text == "No # remark");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message == "tint has no room for # no remark, and too much");
}

TEST_CASE("a statement knows its words, its values and their places") {
  const Reading reading("page 4 called lost on rose   # later\n");
  const Statement &page = reading.tree.statements[0];
  const auto words = [&](Range range) { return std::string(reading.sources.text(range)); };
  CHECK(words(reading.tree.range(page)) == "page 4 called lost on rose");
  CHECK(words(reading.tree.keyword(page)) == "page");
  CHECK(words(reading.tree.range(*reading.tree.find(page, "pages"))) == "4");
  CHECK(words(reading.tree.range(*reading.tree.find(page, "called"))) == "lost");
  CHECK(words(reading.tree.range(*reading.tree.find(page, "stock"))) == "rose");
  CHECK(reading.tree.find(page, "mode") == nullptr);
}

TEST_CASE("says takes every line that stands deeper, blank lines and all") {
  const Reading reading("page 4\n"
                        "  words in body\n"
                        "    says\n"
                        "      # Lost property\n"
                        "\n"
                        "      One glove, \"left\".\n"
                        "        deeper\n"
                        "     less deep\n"
                        "\n"
                        "  patch\n");
  CHECK(reading.told() == "");
  CHECK(reading.outline() == "page(words(says) patch) ");
  CHECK(prose_text(reading.tree, reading.line("says"), reading.sources) ==
        "# Lost property\n\nOne glove, \"left\".\n  deeper\nless deep\n");
}

TEST_CASE("says in one line holds its text in quotes") {
  const Reading reading("text greeting\n  says \"Mind the puddle.\"\n");
  CHECK(reading.told() == "");
  CHECK_FALSE(reading.line("says").has_prose);
  CHECK(reading.tree.get<Quoted>(reading.line("says"), "text")->text == "Mind the puddle.");
}

TEST_CASE("every takes the facts of its kind") {
  CHECK(Reading("every picture\n  fits live\n").told() == "");
  CHECK(Reading("every words\n  columns 2\n").told() == "");
  CHECK(Reading("every patch\n  columns 2\n").problems.size() == 1);
}

TEST_CASE("a wrong line hides no other") {
  const Reading reading("editoin \"Bus\"\n"
                        "  size 5.5 x 8.5in\n"
                        "  runn 50 copies\n"
                        "  papr cream\n"
                        "page 2\n"
                        "  pictur \"a.png\"\n"
                        "    turn -3\n"
                        "  patch\n");
  CHECK(reading.outline() == "edition(size run paper) page(picture(turn) patch) ");
  std::string messages;
  for (const Problem &problem : reading.problems)
    messages += problem.message + "\n";
  CHECK(messages == "no line at the left edge begins with editoin; did you mean edition?\n"
                    "5.5 of what? the side of a sheet or page is a length\n"
                    "an edition has no fact called runn; did you mean run?\n"
                    "an edition has no fact called papr; did you mean paper?\n"
                    "a page has nothing called pictur; did you mean picture?\n"
                    "-3 of what? a turn is in degrees\n");
}

TEST_CASE("a line that stands beside its element is read as the element's") {
  const Reading reading("page 2\n"
                        "  qr \"x\"\n"
                        "    turn 3deg\n"
                        "  at 1in 1in, 1in x 1in\n"
                        "  describe \"An address\"\n"
                        "  patch\n");
  CHECK(reading.outline() == "page(qr(turn at describe) patch) ");
  CHECK(reading.problems.size() == 2);
}

TEST_CASE("a line that stands too far out takes no line from the thing that it parts") {
  const Reading r("edition \"Bus\"\n  number 4\nsize letter\n  pages 8\n  run 50 copies\n"
                  "page 1\n");
  CHECK(r.outline() == "edition(number size pages run) page ");
  CHECK(r.problems.size() == 1);
}

TEST_CASE("a line that stands too deep is read where it belongs") {
  const Reading reading("page 2\n"
                        "  picture \"a.png\"\n"
                        "    at 1in 1in, 1in x 1in\n"
                        "      describe \"A bus\"\n"
                        "      turn 2deg\n"
                        "    outline 1pt black\n");
  CHECK(reading.outline() == "page(picture(at describe turn outline)) ");
  CHECK(reading.problems.size() == 1);
}

TEST_CASE("a file that stands in as a whole is told once") {
  const Reading reading("  edition \"Bus\"\n    size a5\n  page 2\n    patch\n");
  CHECK(reading.outline() == "edition(size) page(patch) ");
  CHECK(reading.problems.size() == 1);
}

TEST_CASE("a block with the other kind of white space is told once and read") {
  const Reading reading(
      "finish\n  collate\n\tfold all\n\t\ttakes 5 s a copy\n\ttrim fore-edge 1mm\n");
  CHECK(reading.outline() == "finish(collate fold(takes) trim) ");
  CHECK(reading.problems.size() == 1);
}

TEST_CASE("what stands under a word that nobody knows is let be") {
  const Reading reading("page 2\n"
                        "  umbrella\n"
                        "      deep 1\n"
                        "    less deep\n"
                        "\t\ttabs\n"
                        "  patch\n");
  CHECK(reading.outline() == "page(patch) ");
  CHECK(reading.problems.size() == 1);
}

TEST_CASE("the grammar alone goes over every line") {
  CHECK(recognise("page 2\n\n  patch\n") == 3);
  CHECK(recognise("page 2") == 1);
  CHECK(recognise("") == 0);
}

// A small edition that shows most of the language.
TEST_CASE("a whole small edition reads without a problem") {
  const Reading reading(R"(borrow "stocks/us"
borrow "machines/copy-shop"

edition "Night Bus Almanac"
  number     4
  dated      2026-11
  maker      "Wet Umbrella Press"
  language   en-GB
  size       half-letter           # a page as folded, before the knife
  folding    saddle-stitch
  run        50 copies, 3 spare
  paper      cream                 # every sheet, unless a page or the cover says otherwise
  cover      on board
  printing   black                 # every page, unless it says otherwise
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

machine corner-copier "Copier at the corner shop"
  prints     black at $0.12 a side
  prints     colour at $0.59 a side
  sizes      letter, legal, tabloid
  bare       1/4in                 # the edge of the sheet that it leaves unprinted
  feeds      16 lb bond to 110 lb index
  duplex     by machine, drift 1/16in
  resolution 600 dpi

bid mail-order "Mail-order booklet printer"
  prints     colour
  copies     1 at $3.10 a copy     # each copy's price from this many on
  postage    $7.50 once

face poster from "Bebas Neue"
style masthead
  face       poster 64/58
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
)");
  CHECK(reading.told() == "");
  CHECK(reading.tree.statements.size() == 82);
}
