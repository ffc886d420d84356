// Slips in what follows the word, each with its whole message.
#include "language/reading.hpp"

#include <doctest/doctest.h>

namespace {
std::string told(const char *text) { return Reading(text).told(); }
} // namespace

TEST_CASE("inch marks") {
  CHECK(told("edition \"Bus\"\n"
             "  size 5.5\" x 8.5\"  # a page\n") ==
        "a.bodkin:2:8: error: inches are written in, not with a mark [inch-marks]\n"
        "  size 5.5\" x 8.5\"  # a page\n"
        "       ~~~~~~~~~~~\n"
        "  why   a straight quote begins a text, so 5.5\" cannot be told from the end of one\n"
        "  type  size 5.5in x 8.5in\n");
}

TEST_CASE("a decimal comma") {
  CHECK(told("edition \"Bus\"\n"
             "  margins 1,5cm\n") ==
        "a.bodkin:2:11: error: a number's decimals stand behind a point: 1.5cm [decimal-comma]\n"
        "  margins 1,5cm\n"
        "          ~~~~~\n"
        "  why   a comma parts the pieces of a line, so this reads as two numbers\n"
        "  type  margins 1.5cm\n");
}

TEST_CASE("a decimal comma in money") {
  CHECK(told("edition \"Bus\"\n"
             "  budget $1,40 a copy\n") ==
        "a.bodkin:2:10: error: a number's decimals stand behind a point: $1.40 [decimal-comma]\n"
        "  budget $1,40 a copy\n"
        "         ~~~~~\n"
        "  why   a comma parts the pieces of a line, so this reads as two numbers\n"
        "  type  budget $1.40 a copy\n");
}

TEST_CASE("a number without a unit") {
  CHECK(told("page 2\n"
             "  picture \"a.png\"\n"
             "    at       1/2 4in, 4.5in x 3.8in\n") ==
        "a.bodkin:3:14: error: 1/2 of what? a place on the page is a length [no-unit]\n"
        "  at       1/2 4in, 4.5in x 3.8in\n"
        "           ~~~\n"
        "  why   in, mm, cm, pt and pc fit here; the unit touches the number\n"
        "  type  at       1/2in 4in, 4.5in x 3.8in\n");
}

TEST_CASE("a unit apart from its number") {
  CHECK(told("page 2\n"
             "  patch\n"
             "    at 1 in 2in, 3in x 3in\n") ==
        "a.bodkin:3:8: error: a unit touches its number: 1in [no-unit]\n"
        "  at 1 in 2in, 3in x 3in\n"
        "     ~~~~\n"
        "  why   a space parts one thing from the next, so the number stands here without a unit\n"
        "  type  at 1in 2in, 3in x 3in\n");
}

TEST_CASE("a unit that is none") {
  CHECK(told("edition \"Bus\"\n"
             "  margins 3inches\n") ==
        "a.bodkin:2:11: error: inches is no unit of length [no-unit]\n"
        "  margins 3inches\n"
        "          ~~~~~~~\n"
        "  why   in, mm, cm, pt and pc fit here; the unit touches the number\n"
        "  type  margins 3in\n");
}

TEST_CASE("money without its sign") {
  CHECK(told("edition \"Bus\"\n"
             "  price 5 a copy\n") ==
        "a.bodkin:2:9: error: 5 of what? money carries its sign or its currency [no-unit]\n"
        "  price 5 a copy\n"
        "        ~\n"
        "  why   here belongs a price, as in price $5 a copy\n"
        "  type  price $5 a copy\n");
}

TEST_CASE("a weight without its unit") {
  CHECK(told("stock cream\n"
             "  weight 90\n") == "a.bodkin:2:10: error: 90 of what? paper is weighed in gsm, or in "
                                 "lb with its kind [no-unit]\n"
                                 "  weight 90\n"
                                 "         ~~\n"
                                 "  why   here belongs a weight of paper, as in weight 28 lb bond\n"
                                 "  type  weight 90 gsm\n");
}

TEST_CASE("pounds without their kind") {
  CHECK(told("stock cream\n"
             "  weight     28 lb\n") ==
        "a.bodkin:2:14: error: 28 lb of which kind of paper? [bare-pounds]\n"
        "  weight     28 lb\n"
        "             ~~~~~\n"
        "  why   pounds are those of 500 sheets of a basic size, which differs by kind; in grams a "
        "square\n"
        "        metre 28 lb is: bond 105, text 41, cover 76, bristol 61, index 51 and tag 46\n"
        "  type  weight     28 lb bond\n"
        "        weight     28 lb text\n"
        "        weight     28 lb cover\n");
}

TEST_CASE("a colour without its sign") {
  CHECK(told("stock cream\n"
             "  tint       f7f1e1\n") ==
        "a.bodkin:2:14: error: a colour by number begins with #: #f7f1e1 [missing-hash]\n"
        "  tint       f7f1e1\n"
        "             ~~~~~~\n"
        "  why   without it, this is read as the name of an ink or a stock\n"
        "  type  tint       #f7f1e1\n");
}

TEST_CASE("a colour of three digits") {
  CHECK(told("stock cream\n"
             "  tint #f7f\n") ==
        "a.bodkin:2:8: error: a colour has six digits, 0 to 9 and a to f [unknown-kind]\n"
        "  tint #f7f\n"
        "       ~~~~\n"
        "  why   two each for red, green and blue, as in #f6a5b8\n"
        "  type  tint #ff77ff\n");
}

TEST_CASE("a page beyond all books") {
  CHECK(told("page 4000000\n") ==
        "a.bodkin:1:6: error: an edition has no page 4000000; there are at most 20000 "
        "[number-too-big]\n"
        "  page 4000000\n"
        "       ~~~~~~~\n"
        "  why   a book that thick does not fold; most likely two numbers have run together\n"
        "  type  the number that was meant; a point or a space may be missing in it\n");
}

TEST_CASE("a number beyond all numbers") {
  CHECK(told("edition \"Bus\"\n"
             "  pages 99999999999999999999\n") ==
        "a.bodkin:2:9: error: 99999999999999999999 is more than anything here can be "
        "[number-too-big]\n"
        "  pages 99999999999999999999\n"
        "        ~~~~~~~~~~~~~~~~~~~~\n"
        "  why   a number has at most 15 digits, 6 of them behind the point\n"
        "  type  the number that was meant; a point or a space may be missing in it\n");
}

TEST_CASE("a page typed as a length") {
  CHECK(told("page 1in colour\n") ==
        "a.bodkin:1:6: error: 1in is a length; a page is a number by itself [unknown-kind]\n"
        "  page 1in colour\n"
        "       ~~~\n"
        "  why   in after a page says what it is printed in, and a space stands before it\n"
        "  type  page 1 in colour\n");
}

TEST_CASE("a line that stops short") {
  CHECK(told("edition \"Bus\"\n"
             "  run 50\n") ==
        "a.bodkin:2:3: error: run stops short: copies or copy comes next [missing-part]\n"
        "  run 50\n"
        "  ~~~~~~\n"
        "  why   a guess would be printed; run stands for how many good copies are made, and how "
        "many spare,\n        to stand in for those that spoil; must be written\n"
        "  type  run 50 copies\n");
}

TEST_CASE("a word alone") {
  CHECK(told("page 2\n"
             "  picture\n") ==
        "a.bodkin:2:3: error: picture alone says nothing: a text in straight quotes comes next "
        "[missing-part]\n"
        "  picture\n"
        "  ~~~~~~~\n"
        "  why   a guess would be printed; picture stands for a picture: PNG, JPEG, TIFF, WebP, "
        "HEIC, SVG, or\n        a page of a PDF\n"
        "  type  picture \"art/harbour.png\"\n");
}

TEST_CASE("a value of another kind") {
  CHECK(told("edition \"Bus\"\n"
             "  size big\n") ==
        "a.bodkin:2:8: error: a size is wanted here, not big [unknown-kind]\n"
        "  size big\n"
        "       ~~~\n"
        "  why   a guess would be printed; size stands for a page as folded, before the knife; "
        "must be\n        written; it is written like this: size half-letter\n");
}

TEST_CASE("a name in capitals") {
  CHECK(told("edition \"Bus\"\n"
             "  paper Cream\n") ==
        "a.bodkin:2:9: error: names are written small: cream [unknown-kind]\n"
        "  paper Cream\n"
        "        ~~~~~\n"
        "  why   words and names have no capitals, so that there is one way to write each; a title "
        "in quotes\n"
        "        may have them\n"
        "  type  paper cream\n");
}

TEST_CASE("a name in quotes") {
  CHECK(told("edition \"Bus\"\n"
             "  machine \"Corner copier\"\n") ==
        "a.bodkin:2:11: error: a name stands without quotes [unknown-kind]\n"
        "  machine \"Corner copier\"\n"
        "          ~~~~~~~~~~~~~~~\n"
        "  why   names are small letters, digits and hyphens; a title in quotes may follow the "
        "name where a\n"
        "        thing is made\n"
        "  type  machine corner-copier\n");
}

TEST_CASE("a text without quotes") {
  CHECK(told("page 2\n"
             "  picture art/moon.png\n") ==
        "a.bodkin:2:11: error: a path or a text stands in straight quotes [unknown-kind]\n"
        "  picture art/moon.png\n"
        "          ~~~~~~~~~~~~\n"
        "  why   only names and words of the language stand bare\n"
        "  type  picture \"art/moon.png\"\n");
}

TEST_CASE("a choice misspelt") {
  CHECK(told("stock cream\n"
             "  sheet letter, grain shrot\n") ==
        "a.bodkin:2:23: error: long or short is wanted here, not shrot; did you mean short? "
        "[unknown-kind]\n"
        "  sheet letter, grain shrot\n"
        "                      ~~~~~\n"
        "  why   a guess would be printed; sheet stands for the size of the sheets and the way "
        "their fibres\n        run\n"
        "  type  sheet letter, grain short\n");
}

TEST_CASE("a little word misspelt") {
  CHECK(told("finish\n"
             "  staple 2, log 1/4in, 2in from head and foot\n") ==
        "a.bodkin:2:13: error: the word leg is wanted here, not log; did you mean leg? "
        "[unknown-kind]\n"
        "  staple 2, log 1/4in, 2in from head and foot\n"
        "            ~~~\n"
        "  why   a guess would be printed; staple stands for staples through the fold: how many, "
        "how long\n        their legs, and how far from head and foot\n"
        "  type  staple 2, leg 1/4in, 2in from head and foot\n");
}

TEST_CASE("words left over") {
  CHECK(told("edition \"Bus\"\n"
             "  marks none please\n") ==
        "a.bodkin:2:14: error: marks has no room for please [unknown-kind]\n"
        "  marks none please\n"
        "             ~~~~~~\n"
        "  why   marks is written like this: marks none\n"
        "  type  marks none\n");
}

TEST_CASE("an element that takes nothing") {
  CHECK(told("page 2\n"
             "  patch black\n") ==
        "a.bodkin:2:9: error: patch has no room for black [unknown-kind]\n"
        "  patch black\n"
        "        ~~~~~\n"
        "  why   patch stands alone on its line\n"
        "  type  patch\n");
}

TEST_CASE("a fraction over nothing") {
  CHECK(told("edition \"Bus\"\n"
             "  margins 1/0in\n") ==
        "a.bodkin:2:11: error: nothing can be parted by 0 [unknown-kind]\n"
        "  margins 1/0in\n"
        "          ~~~~~\n"
        "  why   a fraction has a number below its line\n");
}

TEST_CASE("a place with its edges the wrong way") {
  CHECK(told("page 2\n"
             "  patch\n"
             "    at 1in from foot, 1in from outer, 1in x 1in\n") ==
        "a.bodkin:3:8: error: 1in from outer stands before 1in from foot [unknown-kind]\n"
        "  at 1in from foot, 1in from outer, 1in x 1in\n"
        "     ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   the parts of a line have one order, so that each is found at a glance: as in `at "
        "0.5in 1in,\n"
        "        4in x 3in`\n"
        "  type  at 1in from outer, 1in from foot, 1in x 1in\n");
}

TEST_CASE("pages in a row, as they are spoken") {
  CHECK(told("page 8 to 10\n") ==
        "a.bodkin:1:6: error: pages in a row are written 8-10 [unknown-kind]\n"
        "  page 8 to 10\n"
        "       ~~~~~~~\n"
        "  why   a list of pages is numbers, commas and a stroke for all those between\n"
        "  type  page 8-10\n");
}

TEST_CASE("a line that stops short is ended as its example is") {
  CHECK(told("edition \"Bus\"\n  budget $0.80\n") ==
        "a.bodkin:2:3: error: budget stops short: what it is for (a side, a copy, once …) comes "
        "next [missing-part]\n"
        "  budget $0.80\n"
        "  ~~~~~~~~~~~~\n"
        "  why   a guess would be printed; budget stands for the most that a copy, or the run, may "
        "cost; over\n        it nothing is printed\n"
        "  type  budget $0.80 a copy\n");
}

TEST_CASE("a day that no calendar has, by the Gregorian rule of leap years") {
  CHECK(told("edition \"Bus\"\n"
             "  dated 2026-02-30\n") ==
        "a.bodkin:2:9: error: no calendar has the day 2026-02-30 [unknown-kind]\n"
        "  dated 2026-02-30\n"
        "        ~~~~~~~~~~\n"
        "  why   dates are year, month and day; what is not known may be left out: 2026-02\n"
        "  type  dated 2026-02\n");
  CHECK(told("edition \"Bus\"\n  dated 2024-02-29\n").empty());
  CHECK(told("edition \"Bus\"\n  dated 2000-02-29\n").empty());
  CHECK_FALSE(told("edition \"Bus\"\n  dated 1900-02-29\n").empty());
  CHECK_FALSE(told("edition \"Bus\"\n  dated 2026-04-31\n").empty());
}

TEST_CASE("a month that no year has") {
  CHECK(told("edition \"Bus\"\n"
             "  dated 2026-13-45\n") ==
        "a.bodkin:2:9: error: no year has the month 13 [unknown-kind]\n"
        "  dated 2026-13-45\n"
        "        ~~~~~~~~~~\n"
        "  why   dates are year, month and day; what is not known may be left out: 2026\n"
        "  type  dated 2026\n");
}

TEST_CASE("a country by its name") {
  CHECK(told("source card\n"
             "  published 1920, USA\n") ==
        "a.bodkin:2:19: error: a country is its two capitals, as US: USA is no code "
        "[unknown-kind]\n"
        "  published 1920, USA\n"
        "                  ~~~\n"
        "  why   the codes are those of ISO 3166; a law whose terms hang on the country looks for "
        "them\n"
        "  type  published 1920, US\n");
  CHECK(told("source card\n  published 1920, fr\n").find("type  published 1920, FR\n") !=
        std::string::npos);
  CHECK(told("source card\n  published 1920, Ruritania\n").find("  type  ") == std::string::npos);
}

TEST_CASE("a right in two words") {
  CHECK(told("source card\n  rights public domain\n").find("type  rights public-domain\n") !=
        std::string::npos);
}

TEST_CASE("words out of a file, their style before") {
  CHECK(told("page 1\n  words from \"words/notes.md\" in label\n")
            .find("type  words in label from \"words/notes.md\"\n") != std::string::npos);
}

TEST_CASE("a date that is none is not taken for never") {
  CHECK(told("source card\n  published sometime\n").find("type  published never") ==
        std::string::npos);
  CHECK(told("source card\n  published\n").find("type  published never") == std::string::npos);
  CHECK(told("source card\n  published never\n").empty());
}
