// Lines with a slip in them, each with the line that is handed out to be typed.
#include "language/mended.hpp"
#include "language/reading.hpp"
#include "language/vocabulary.hpp"

#include <doctest/doctest.h>

using namespace bodkin::language;

namespace {

constexpr std::string_view metric = "edition \"Bus\"\n  margins 12mm\n  budget £1.20 a copy\n";

std::string meant(std::string_view line, std::string_view under, std::string_view file = {}) {
  const Entry *entry = entry_of(line.substr(0, line.find(' ')), under);
  REQUIRE(entry != nullptr);
  return mended(line, *entry, file).value_or("");
}

} // namespace

TEST_CASE("a maker's own line is mended, not replaced by an example") {
  struct Row {
    std::string_view under, line, meant;
  };
  for (const Row &row : {
           Row{"edition", "run        40, 2 spare", "run        40 copies, 2 spare"},
           Row{"edition", "cover board in colour", "cover on board in colour"},
           Row{"edition", "printing grey", "printing black"},
           Row{"edition", "budget 1.20", "budget $1.20 a copy"},
           Row{"edition", "language English", "language en-GB"},
           Row{"edition", "folding saddle stitch", "folding saddle-stitch"},
           Row{"edition", "margins left 1/2in, right 1/4in",
               "margins inner 1/2in, outer 1/4in, head 1/2in, foot 1/2in"},
           Row{"machine", "prints black at $0.05 per side", "prints black at $0.05 a side"},
           Row{"machine", "prints black at 5c a side", "prints black at $0.05 a side"},
           Row{"machine", "prints black at 0.05 € a side", "prints black at €0.05 a side"},
           Row{"machine", "prints black $0.05 a side", "prints black at $0.05 a side"},
           Row{"file", "page 3:", "page 3"},
           Row{"file", "page 3 #dedication", "page 3 # dedication"},
           Row{"words", "columns 2 gap 6mm", "columns 2, gap 6mm"},
           Row{"words", "columns two", "columns 2"},
           Row{"picture", "fills    the page", "fills    page"},
           Row{"hand", "takes 20 seconds a copy", "takes 20 s a copy"},
           Row{"style", "face book 10pt", "face book 10"},
           Row{"page", "rule 1pt, 1in 1in to 2in 1in", "rule 1pt black, 1in 1in to 2in 1in"},
           Row{"finish", "trim 3mm", "trim fore-edge 3mm"},
       }) {
    CAPTURE(row.line);
    CHECK(meant(row.line, row.under) == row.meant);
  }
}

TEST_CASE("a place is mended whole, in the unit that its maker is used to") {
  CHECK(meant("at 12 14, 124 x 45", "picture", metric) == "at 12mm 14mm, 124mm x 45mm");
  CHECK(meant("at 1 2, 3 x 4", "picture") == "at 1in 2in, 3in x 4in");
  CHECK(meant("at 12 mm 14 mm, 12 cm by 4 cm", "picture") == "at 12mm 14mm, 12cm x 4cm");
  CHECK(meant("at 12mm 14mm 124mm, 45mm", "picture") == "at 12mm 14mm, 124mm x 45mm");
  CHECK(meant("at 12mm from outside, 9mm from bottom, 20mm x 5mm", "picture") ==
        "at 12mm from outer, 9mm from foot, 20mm x 5mm");
}

TEST_CASE("money is mended in the money of the file") {
  CHECK(meant("price 3", "edition", metric) == "price £3");
  CHECK(meant("costs 6.50 per 500 sheets", "stock", metric) == "costs £6.50 per 500 sheets");
}

TEST_CASE("where no few changes help, nothing is handed out") {
  CHECK(meant("run forty copies", "edition") == "");
  CHECK(meant("at somewhere nice", "picture") == "");
}

TEST_CASE("the line to type keeps the maker's figures, and what a tool may change is that alone") {
  const Reading r("page 2\n  words \"a\" in b\n    columns  2 gap 6mm\n");
  CHECK(r.told() == "a.bodkin:3:16: error: columns has no room for gap 6mm [unknown-kind]\n"
                    "  columns  2 gap 6mm\n"
                    "             ~~~~~~~\n"
                    "  why   columns is written like this: columns 2, gap 1/4in\n"
                    "  type  columns  2, gap 6mm\n");
  REQUIRE(r.problems.size() == 1);
  REQUIRE(r.problems[0].edits.size() == 1);
  CHECK(r.problems[0].edits[0].text == ",");
}

TEST_CASE("a mark of inches behind a drawn fraction leaves the fraction") {
  const Reading r("page 2\n  picture \"a.png\"\n    at ½” ½”, 4” x 2”\n");
  REQUIRE(r.problems.size() == 1);
  REQUIRE(r.problems[0].type.size() == 1);
  CHECK(r.problems[0].type[0].line == "at ½in ½in, 4in x 2in");
}

TEST_CASE("a word that stands behind another is told which") {
  CHECK(
      Reading("page 2\n  stamp \"moon\"\n").told() ==
      "a.bodkin:2:3: error: a page has nothing called stamp; it stands behind hand "
      "[unknown-word]\n"
      "  stamp \"moon\"\n"
      "  ~~~~~\n"
      "  why   under page stand: blank, stays, picture, words, credits, colophon, rule, patch, qr, "
      "lay,\n"
      "        hand, paste-up and folio\n"
      "  type  hand stamp \"moon\"\n");
}

TEST_CASE("words by the name of a text are taken from it") {
  CHECK(Reading("edition \"Bus\"\ntext notes from \"notes.md\"\npage 2\n"
                "  words notes in body\n")
            .told() ==
        "a.bodkin:4:9: error: a text by its name stands behind of: of notes [unknown-kind]\n"
        "  words notes in body\n"
        "        ~~~~~\n"
        "  why   words in quotes are set as they are; of takes them from the text of that name\n"
        "  type  words of notes in body\n");
}

TEST_CASE("a word inside a line is explained with the line") {
  CHECK(explanation("grain").starts_with("grain stands in a line of sheet:\n\nsheet, under stock"));
  CHECK(explanation("gsm").starts_with("gsm may stand in a weight of paper: 90 gsm"));
  CHECK(explanation("wobble").empty());
}
