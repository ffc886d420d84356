// Slips in words and indentation, each with its whole message.
#include "language/reading.hpp"

#include <doctest/doctest.h>

namespace {
std::string told(const char *text) { return Reading(text).told(); }
} // namespace

TEST_CASE("an unknown word is told with the nearest") {
  CHECK(told("page 2\n"
             "  picture \"a.png\"\n"
             "    discribe \"An umbrella\"\n") ==
        "a.bodkin:3:5: error: a picture has no fact called discribe; did you mean describe? "
        "[unknown-word]\n"
        "  discribe \"An umbrella\"\n"
        "  ~~~~~~~~\n"
        "  why   under picture stand: at, panel, cells, fills, fits, crop, focus, turn, tone, "
        "describe,\n"
        "        source, outline, fill and only\n"
        "  type  describe \"An umbrella\"\n");
}

TEST_CASE("a word in the wrong place is told where it stands") {
  CHECK(
      told("page 2\n"
           "  staple 2\n") ==
      "a.bodkin:2:3: error: a page has nothing called staple; it stands under finish "
      "[unknown-word]\n"
      "  staple 2\n"
      "  ~~~~~~\n"
      "  why   under page stand: blank, stays, picture, words, credits, colophon, rule, patch, qr, "
      "lay,\n"
      "        hand, paste-up and folio\n"
      "  type  finish\n"
      "          staple 2, leg 1/4in, 2 1/8in from head and foot\n");
}

TEST_CASE("a word that nobody knows lists those that fit") {
  CHECK(told("style body\n"
             "  wobble 3\n") ==
        "a.bodkin:2:3: error: a style has no fact called wobble [unknown-word]\n"
        "  wobble 3\n"
        "  ~~~~~~\n"
        "  why   under style stand: face, lines, ink, indent, space, figures, heading, quote, list "
        "and code\n");
}

TEST_CASE("a word in capitals is read small") {
  CHECK(told("Edition \"Bus\"\n") ==
        "a.bodkin:1:1: error: Edition is written small: edition [unknown-word]\n"
        "  Edition \"Bus\"\n"
        "  ~~~~~~~\n"
        "  why   words and names of a manuscript have no capitals, so that there is one way to "
        "write each\n"
        "  type  edition \"Bus\"\n");
}

TEST_CASE("a colon after a word") {
  CHECK(told("edition \"Bus\"\n"
             "  number: 4\n") ==
        "a.bodkin:2:9: error: no colon stands after number [colon-after-word]\n"
        "  number: 4\n"
        "        ~\n"
        "  why   a space parts the word from what follows it\n"
        "  type  number 4\n");
}

TEST_CASE("a line that begins with no word") {
  CHECK(told("edition \"Bus\"\n"
             "  5.5in x 8.5in\n") == "a.bodkin:2:3: error: a line begins with a word that says "
                                     "what it is about, not with 5.5in [unknown-word]\n"
                                     "  5.5in x 8.5in\n"
                                     "  ~~~~~\n"
                                     "  why   running text stands under says, indented deeper; a "
                                     "comment begins with # and a space\n");
}

TEST_CASE("a comment without its space") {
  CHECK(
      told("#remark\n") ==
      "a.bodkin:1:1: error: a space follows the # of a comment, or it is a colour [unknown-word]\n"
      "  #remark\n"
      "  ~~~~~~~\n"
      "  why   #f6a5b8 is a colour; # f6a5b8 is a remark that nobody prints\n"
      "  type  # remark\n");
}

TEST_CASE("running text without says") {
  CHECK(told("page 2\n"
             "  words in body\n"
             "    Some running text here,\n"
             "    and more of it.\n") == "a.bodkin:3:5: error: words have no fact called Some; "
                                         "running text stands under says [unknown-word]\n"
                                         "  Some running text here,\n"
                                         "  ~~~~~~~~~~~~~~~~~~~~~~~\n"
                                         "  why   the lines below words are facts about it; under "
                                         "says, indented deeper, every line is text as\n"
                                         "        it is\n"
                                         "  type  says\n"
                                         "          Some running text here,\n");
}

TEST_CASE("says without words") {
  CHECK(told("page 2\n"
             "  words in body\n"
             "    says\n"
             "page 3\n") == "a.bodkin:3:5: error: says has no words [missing-part]\n"
                            "  says\n"
                            "  ~~~~\n"
                            "  why   they stand on the lines below it, indented deeper than says, "
                            "or behind it in straight quotes\n"
                            "  type  says \"Mind the puddle.\"\n");
}

TEST_CASE("one fact twice") {
  CHECK(told("stock cream\n"
             "  weight 28 lb bond\n"
             "  weight 24 lb bond\n") ==
        "a.bodkin:3:3: error: weight is already written on line 2 [same-fact-twice]\n"
        "  weight 24 lb bond\n"
        "  ~~~~~~~~~~~~~~~~~\n"
        "  why   each fact is written once, so that there is no question which line counts; two "
        "are often the\n"
        "        trace of two people's changes put together\n"
        "  type  keep this line or line 2, and take the other out\n"
        "a.bodkin:2:3: note: the first one\n");
}

TEST_CASE("a line two spaces too few") {
  CHECK(told("page 2\n"
             "  qr \"x\"\n"
             "  at 1in 1in, 1in x 1in\n") ==
        "a.bodkin:3:3: error: a page has no at; the qr above it (line 2) has [not-here]\n"
        "  at 1in 1in, 1in x 1in\n"
        "  ~~\n"
        "  why   2 spaces too few: this line stands beside the qr instead of under it\n"
        "  type      at 1in 1in, 1in x 1in\n"
        "a.bodkin:2:3: note: what it belongs to\n");
}

TEST_CASE("a line two spaces too many") {
  CHECK(told("page 2\n"
             "  picture \"a.png\"\n"
             "    at 1in 1in, 1in x 1in\n"
             "      describe \"A bus\"\n") ==
        "a.bodkin:4:7: error: nothing stands under at; describe belongs to the picture above it "
        "(line 2) [not-here]\n"
        "  describe \"A bus\"\n"
        "  ~~~~~~~~\n"
        "  why   2 spaces too many: this line stands under at instead of under the picture\n"
        "  type      describe \"A bus\"\n"
        "a.bodkin:2:3: note: what it belongs to\n");
}

TEST_CASE("a line under a fact of one line") {
  CHECK(told("page 2\n"
             "  picture \"a.png\"\n"
             "    source harbour-card\n"
             "      title \"Harbour\"\n") ==
        "a.bodkin:4:7: error: nothing stands under source (line 3) [not-here]\n"
        "  title \"Harbour\"\n"
        "  ~~~~~\n"
        "  why   source is a fact of one line; a line that stands deeper than the one above it "
        "belongs to\n"
        "        that one\n"
        "a.bodkin:3:5: note: the line above it\n");
}

TEST_CASE("a line between two depths") {
  CHECK(told("page 2\n"
             "    blank\n"
             "  patch\n") ==
        "a.bodkin:3:3: error: this line stands under none of the lines above it [not-here]\n"
        "  patch\n"
        "  ~~~~~\n"
        "  why   lines that belong together begin one below the other; those near by stand as far "
        "in as line\n"
        "        2\n"
        "  type      patch\n"
        "a.bodkin:2:5: note: a line to stand below\n");
}

TEST_CASE("a first line that stands in") {
  CHECK(told("  edition \"Bus\"\n"
             "  page 2\n") ==
        "a.bodkin:1:3: error: a file's first line stands at the left edge [not-here]\n"
        "  edition \"Bus\"\n"
        "  ~~~~~~~~~~~~~\n"
        "  why   a line that stands further in belongs to the one above it, and there is none\n"
        "  type  edition \"Bus\"\n");
}

TEST_CASE("tabs among spaces") {
  CHECK(told("finish\n"
             "  collate\n"
             "\tfold all\n") ==
        "a.bodkin:3:2: error: this line begins with a tab, its block with spaces [mixed-indent]\n"
        "  fold all\n"
        "  ~~~~~~~~\n"
        "  why   a tab is as wide as each program pleases, so nobody can say what this line "
        "belongs to\n"
        "  type    fold all\n");
}

TEST_CASE("curly quotes") {
  CHECK(told("edition \"Bus\"\n"
             "  maker “Wet Umbrella Press”\n") ==
        "a.bodkin:2:9: error: these quotes are curly; a path or a text stands in straight ones "
        "[curly-quotes]\n"
        "  maker “Wet Umbrella Press”\n"
        "        ~~~~~~~~~~~~~~~~~~~~\n"
        "  why   a word processor or a phone bent them; inside prose curly quotes are right and "
        "stay\n"
        "  type  maker \"Wet Umbrella Press\"\n");
}

TEST_CASE("single quotes") {
  CHECK(told("edition \"Bus\"\n"
             "  maker 'Wet Umbrella Press'\n") ==
        "a.bodkin:2:9: error: a path or a text stands in double quotes [curly-quotes]\n"
        "  maker 'Wet Umbrella Press'\n"
        "        ~~~~~~~~~~~~~~~~~~~~\n"
        "  why   a single quote may stand inside a text, so it cannot end one\n"
        "  type  maker \"Wet Umbrella Press\"\n");
}

TEST_CASE("a quote that nobody closes") {
  CHECK(
      told("edition \"Bus\"\n"
           "  maker \"Wet Umbrella Press\n") ==
      "a.bodkin:2:9: error: this text begins with a quote and has none at its end [missing-part]\n"
      "  maker \"Wet Umbrella Press\n"
      "        ~~~~~~~~~~~~~~~~~~~\n"
      "  why   a text in quotes ends on its own line; longer ones stand under says or in a file\n"
      "  type  maker \"Wet Umbrella Press\"\n");
}
