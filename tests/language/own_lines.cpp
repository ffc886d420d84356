// The maker's own line is what is handed out, and once it is typed nothing is said any more.
#include "language/reading.hpp"

#include <algorithm>
#include <doctest/doctest.h>

using namespace bodkin;

namespace {

std::string indentation(std::string_view line) {
  return std::string(line.substr(0, line.find_first_not_of(" \t")));
}

// The file with the line of its one problem typed as it is told.
std::string typed_as_told(const Reading &reading, std::string text) {
  REQUIRE(reading.problems.size() == 1);
  const Problem &problem = reading.problems[0];
  REQUIRE(problem.type.size() == 1);
  const std::uint32_t begin = bytes(problem.range.begin);
  const std::size_t first = begin == 0 ? 0 : text.rfind('\n', begin - 1) + 1;
  const std::size_t end = text.find('\n', begin);
  const std::string &typed = problem.type[0].line;
  const std::string blanks = typed.starts_with(' ') || problem.check == "not-here"
                                 ? ""
                                 : indentation(std::string_view(text).substr(first));
  std::string lines = blanks + typed;
  for (std::size_t at = lines.find('\n'); at != lines.npos; at = lines.find('\n', at + 1))
    lines.insert(at + 1, blanks);
  return text.replace(first, end - first, lines);
}

struct Slip {
  std::string_view under, line, message, typed;
};

std::string around(const Slip &slip) {
  return "edition \"Kettle\"\n  margins 8mm\n  size a7\n" +
         under(slip.under, std::string(slip.line)).substr(slip.under == "edition" ? 14 : 0);
}

} // namespace

TEST_CASE("each slip is answered with the maker's own line, which then says nothing more") {
  for (const Slip &slip : {
           Slip{"machine", "prints black at 12¢ a side", "a sum of money is wanted here, not 12¢",
                "prints black at $0.12 a side"},
           Slip{"machine", "prints black at 150c a side", "a sum of money is wanted here, not 150c",
                "prints black at $1.50 a side"},
           Slip{"file", "page 6 on plain in colour", "in colour stands before on plain",
                "page 6 in colour on plain"},
           Slip{"file", "page 6 by counter on plain", "on plain stands before by counter",
                "page 6 on plain by counter"},
           Slip{"edition", "cover on card, in colour", "no comma stands before the word in",
                "cover on card in colour"},
           Slip{"edition", "cover in colour on card", "on card stands before in colour",
                "cover on card in colour"},
           Slip{"edition", "run 10 copies called fine, 2 spare",
                "2 spare stands before called fine", "run 10 copies, 2 spare called fine"},
           Slip{"stock", "sheet A4", "names are written small: a4", "sheet a4"},
           Slip{"insert", "size A7", "names are written small: a7", "size a7"},
           Slip{"insert", "size Half-Letter", "names are written small: half-letter",
                "size half-letter"},
           Slip{"page", "words from \"words/notes.md\" in label",
                "in label stands before from \"words/notes.md\"",
                "words in label from \"words/notes.md\""},
           Slip{"edition", "dated November 2026", "a date is written in figures: 2026-11",
                "dated 2026-11"},
           Slip{"edition", "dated 3 May 2026", "a date is written in figures: 2026-05-03",
                "dated 2026-05-03"},
           Slip{"edition", "dated Sept 12, 2026", "a date is written in figures: 2026-09-12",
                "dated 2026-09-12"},
           Slip{"stock", "weight 90g", "paper is weighed in gsm: 90 gsm", "weight 90 gsm"},
           Slip{"stock", "weight 90 g/m²", "paper is weighed in gsm: 90 gsm", "weight 90 gsm"},
           Slip{"stock", "weight 90 grams per square metre", "paper is weighed in gsm: 90 gsm",
                "weight 90 gsm"},
           Slip{"stock", "weight 90 GSM", "paper is weighed in gsm: 90 gsm", "weight 90 gsm"},
           Slip{"edition", "budget $88 the run",
                "what it is for (a side, a copy, once …) is wanted here, not the",
                "budget $88 a run"},
           Slip{"edition", "run 40 copies, 10% spare", "spare copies are counted; 10% of 40 are 4",
                "run 40 copies, 4 spare"},
           Slip{"edition", "run 40", "run stops short: copies or copy comes next", "run 40 copies"},
           Slip{"edition", "folding 8-page-mini", "a name is wanted here, not 8-page-mini",
                "folding eight-page-mini"},
           Slip{"edition", "folding section 16", "folding has no room for 16",
                "folding section-16"},
           Slip{"file", "stock thin like paper 90", "stock has no room for 90",
                "stock thin like paper-90"},
           Slip{"page", "hand rubber stamp \"moon\"",
                "stamp, sticker, signature, number, spray, colour, tear, punch, tip-in or other is "
                "wanted here, not rubber; did you mean stamp?",
                "hand stamp \"moon\""},
           Slip{"insert", "size 85x55mm",
                "x stands between two lengths, each with its unit: 85mm x 55mm",
                "size 85mm x 55mm"},
           Slip{"insert", "size 85mmx55mm",
                "x stands between two lengths, each with its unit: 85mm x 55mm",
                "size 85mm x 55mm"},
           Slip{"insert", "size 85x55",
                "x stands between two lengths, each with its unit: 85mm x 55mm",
                "size 85mm x 55mm"},
           Slip{"picture", "at 1in 1in, 4.5inx3in",
                "x stands between two lengths, each with its unit: 4.5in x 3in",
                "at 1in 1in, 4.5in x 3in"},
           Slip{"picture", "at 9mm from foot, 8mm from outer, 20mm x 5mm",
                "8mm from outer stands before 9mm from foot",
                "at 8mm from outer, 9mm from foot, 20mm x 5mm"},
           Slip{"insert", "4 up", "a line begins with the word that says what it is about: up",
                "up 4"},
           Slip{"edition", "sells 5 copies \"by post\", costs $2.10",
                "sells stops short: what it is for (a side, a copy, once …) comes next",
                "sells 5 copies \"by post\", costs $2.10 a copy"},
           Slip{"edition", "sells 5 copies at the table, share 40%",
                "a path or a text stands in straight quotes",
                "sells 5 copies \"at the table\", share 40%"},
           Slip{"edition", "sells 5 copies \"here\", share 40%, at $5",
                "at $5 stands before share 40%", "sells 5 copies \"here\", at $5, share 40%"},
           Slip{"edition", "run 5 copies called De Luxe", "names are written small: de-luxe",
                "run 5 copies called de-luxe"},
           Slip{"edition", "run 40 plain, 2 spare",
                "a run says its copies, its spares, and what it is called",
                "run        40 copies, 2 spare called plain"},
           Slip{"edition", "run 40 plain, 2 spare called plain",
                "a run says its copies, its spares, and what it is called",
                "run        40 copies, 2 spare called plain"},
           Slip{"file", "page 3 colour", "called, in, on or by is wanted here, not colour",
                "page 3 in colour"},
           Slip{"source", "rights CC-BY-NC-4.0",
                "a licence stands in quotes behind the word licence",
                "rights licence \"CC-BY-NC-4.0\""},
           Slip{"source", "rights \"CC BY 4.0\"",
                "a licence stands in quotes behind the word licence",
                "rights licence \"CC BY 4.0\""},
           Slip{"stock", "costs $9.50 a ream",
                "side, sheet, copy, plate, pass, run or hour is wanted here, not ream",
                "costs $9.50 per 500 sheets"},
           Slip{"stock", "costs $9.50 per pack of 250",
                "how many sheets or sides is wanted here, not pack", "costs $9.50 per 250 sheets"},
           Slip{"stock", "costs $9.50 a pack of 250 sheets",
                "side, sheet, copy, plate, pass, run or hour is wanted here, not pack",
                "costs $9.50 per 250 sheets"},
           Slip{"file", "source \"old-cut\"", "a name stands without quotes", "source old-cut"},
           Slip{"insert", "up max", "most or a whole number is wanted here, not max", "up most"},
       }) {
    CAPTURE(slip.line);
    const std::string text = around(slip);
    const Reading reading(text);
    REQUIRE(reading.problems.size() == 1);
    CHECK(reading.problems[0].message == slip.message);
    REQUIRE(reading.problems[0].type.size() == 1);
    CHECK(reading.problems[0].type[0].line == slip.typed);
    CHECK(Reading(typed_as_told(reading, text)).told() == "");
  }
}

TEST_CASE("only behind a fact is handed out below it, and then says nothing more") {
  std::string_view parents = language::entry_of("only", "sells")->under;
  int seen = 0;
  while (!parents.empty()) {
    const std::string_view parent = parents.substr(0, parents.find(' '));
    parents.remove_prefix(std::min(parent.size() + 1, parents.size()));
    for (const language::Entry *entry : language::entries_named(parent)) {
      const std::string_view home = entry->under.substr(0, entry->under.find(' '));
      const std::string own = std::string(entry->example);
      if (home == "folding") // its steps are the same for all copies
        continue;
      CAPTURE(own);
      for (const std::string_view behind : {" only de-luxe", ", only for De Luxe copies"}) {
        const std::string text = under(home, own + std::string(behind));
        const Reading reading(text);
        REQUIRE(reading.problems.size() == 1);
        CHECK(reading.problems[0].message == "whose copies these are is said below " +
                                                 std::string(parent) + ", on a line of its own");
        REQUIRE(reading.problems[0].type.size() == 1);
        CHECK(reading.problems[0].type[0].line == own + "\n  only de-luxe");
        const Reading typed(typed_as_told(reading, text));
        CHECK(typed.told() == "");
        CHECK(typed.outline() == reading.outline()); // what was told is what is worked with
        CHECK(typed.tree.get<language::Word>(typed.line("only"), "run")->text == "de-luxe");
        ++seen;
      }
    }
  }
  CHECK(seen > 50);
}

TEST_CASE("the name of a run behind a fact is whose it is, with only or without") {
  const Reading reading("edition \"Bus\"\n  run 5 copies called plain\n"
                        "  run 2 copies called de-luxe\n  price $9 a copy for de-luxe\n");
  CHECK(reading.told() ==
        "a.bodkin:4:19: error: whose copies these are is said below price, on a line of its own "
        "[unknown-kind]\n"
        "  price $9 a copy for de-luxe\n"
        "                  ~~~~~~~~~~~\n"
        "  why   price tells one fact; the line below it, further in, says that it holds for the "
        "copies of\n"
        "        one run alone\n"
        "  type  price $9 a copy\n"
        "          only de-luxe      (both lines)\n");
}

TEST_CASE("a run's name anywhere on a line is never dropped in silence") {
  for (const char *line : {"price $9 a copy de-luxe only", "price de-luxe $9 a copy",
                           "price $9 a copy, only De Luxe", "price $9 a copy (de-luxe)"}) {
    CAPTURE(line);
    const std::string text = std::string("edition \"Bus\"\n  run 5 copies called plain\n"
                                         "  run 2 copies called de-luxe\n  ") +
                             line + "\n";
    const Reading reading(text);
    REQUIRE(reading.problems.size() == 1);
    REQUIRE(reading.problems[0].type.size() == 1);
    CHECK(reading.problems[0].type[0].line == "price $9 a copy\n  only de-luxe");
    CHECK(Reading(typed_as_told(reading, text)).told() == "");
  }
}

TEST_CASE("what is the same for all runs takes no only, and says so") {
  const Reading reading("edition \"Bus\"\n  margins 8mm only de-luxe\n");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message == "margins speaks of the copies of all runs");
  CHECK(reading.problems[0].type[0].remark == "for the copies of all runs");
}

TEST_CASE("only speaks of one run") {
  const std::string text = "edition \"Bus\"\n  price $9 a copy\n    only plain or de-luxe\n";
  const Reading reading(text);
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message == "only speaks of one run");
  CHECK(reading.problems[0].type[0].line == "only plain");
  CHECK(reading.problems[0].type[0].remark ==
        "and the line above it once more, with `only de-luxe` below it");
  CHECK(Reading(typed_as_told(reading, text)).told() == "");
}

TEST_CASE("a cover that says how it is printed and not on what has the paper of the copy") {
  const std::string text = "edition \"Bus\"\n  paper cream\n  cover in colour\n";
  const Reading reading(text);
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message == "cover says its paper before how it is printed");
  CHECK(reading.problems[0].type[0].line == "cover      on cream in colour");
  CHECK(Reading(typed_as_told(reading, text)).told() == "");
}

TEST_CASE("a price that is for a copy says so or not, whatever follows it") {
  const Reading reading("edition \"Bus\"\n  sells 5 copies \"here\", at $6, share 40%\n");
  CHECK(reading.told() == "");
  CHECK(reading.tree.get<Rate>(reading.line("sells"), "price")->per == Per::copy);
}

TEST_CASE("parts of a line in another order are told by their order") {
  CHECK(Reading("page 6 on plain in colour\n").told() ==
        "a.bodkin:1:8: error: in colour stands before on plain [unknown-kind]\n"
        "  page 6 on plain in colour\n"
        "         ~~~~~~~~~~~~~~~~~~\n"
        "  why   the parts of a line have one order, so that each is found at a glance: of page it "
        "is called,\n"
        "        in, on and by\n"
        "  type  page 6 in colour on plain\n");
}

TEST_CASE("a comma too many is told as that") {
  CHECK(Reading("edition \"Bus\"\n  cover on card, in colour\n").told() ==
        "a.bodkin:2:16: error: no comma stands before the word in [unknown-kind]\n"
        "  cover on card, in colour\n"
        "               ~\n"
        "  why   commas part the pieces of a list; cover is written like this: cover on board\n"
        "  type  cover on card in colour\n");
}

TEST_CASE("grams a square metre have their own name") {
  CHECK(Reading("stock thin\n  weight 90 g/m²\n").told() ==
        "a.bodkin:2:10: error: paper is weighed in gsm: 90 gsm [no-unit]\n"
        "  weight 90 g/m²\n"
        "         ~~~~~~~\n"
        "  why   gsm is grams a square metre; g alone is the mass of a thing\n"
        "  type  weight 90 gsm\n");
}

TEST_CASE("a number before its word is turned round and read") {
  const Reading reading("insert card\n  4 up\n");
  CHECK(reading.told() ==
        "a.bodkin:2:3: error: a line begins with the word that says what it is about: up "
        "[unknown-word]\n"
        "  4 up\n"
        "  ~~~~\n"
        "  why   so each fact is found in its place, and nobody has to read a line to its end\n"
        "  type  up 4\n");
  CHECK(reading.outline() == "insert(up) ");
  CHECK(reading.tree.get<language::Count>(reading.line("up"), "copies")->value == 4);
}

TEST_CASE("where no small change helps, the form is shown and nobody's figures are handed out") {
  CHECK(Reading("edition \"Bus\"\n  budget plenty\n").told() ==
        "a.bodkin:2:10: error: a sum of money is wanted here, not plenty [unknown-kind]\n"
        "  budget plenty\n"
        "         ~~~~~~\n"
        "  why   a guess would be printed; budget stands for the most that a copy, or the run, may "
        "cost; over\n"
        "        it nothing is printed; it is written like this: budget $1.40 a copy\n");
}

TEST_CASE("a line is read as it was meant, so that nothing follows from half of it") {
  const Reading reading("page 2\n  picture \"a.png\"\n    at 1/2in 1/2in, 4,5in x 3in\n");
  REQUIRE(reading.problems.size() == 1);
  const language::Statement &at = reading.line("at");
  CHECK(at.broken);
  CHECK(at.meant);
  const auto *place = reading.tree.get<language::Place>(at, "place");
  REQUIRE(place != nullptr);
  CHECK(place->size.width == Length::inches(9, 2));
  CHECK(reading.sources.text(reading.tree.range(*reading.tree.find(at, "place"))) ==
        "1/2in 1/2in, 4,5in x 3in");
}

TEST_CASE("where a file has several moneys, none is taken for the one that was meant") {
  const Reading mixed("edition \"Bus\"\n  budget £3 a copy\n  price 2,50 €\n");
  CHECK(mixed.problems[0].type[0].line == "price €2.50");
  CHECK_FALSE(mixed.line("price").meant);
  const Reading euros("edition \"Bus\"\n  budget €3 a copy\n  price 2,50 €\n");
  CHECK(euros.line("price").meant);
}

TEST_CASE("values of a mended line keep their exact words where the slip is elsewhere") {
  const Reading reading("page 4 on rose in colour\n");
  const language::Statement &page = reading.line("page");
  CHECK(reading.sources.text(reading.tree.range(*reading.tree.find(page, "pages"))) == "4");
  CHECK(reading.tree.get<language::Word>(page, "mode")->text == "colour");
  CHECK(reading.tree.get<language::Word>(page, "stock")->text == "rose");
}

TEST_CASE("a page one space in begins at the left edge") {
  const std::string text = "page 3-5\n  blank\n page 6\n  picture \"a.png\"\n    turn 3deg\n";
  const Reading reading(text);
  CHECK(reading.told() ==
        "a.bodkin:3:2: error: page begins at the left edge [not-here]\n"
        "  page 6\n"
        "  ~~~~\n"
        "  why   1 space too many: a line that stands further in belongs to the one above it, here "
        "the page\n"
        "        of line 1\n"
        "  type  page 6\n");
  CHECK(reading.outline() == "page(blank) page(picture(turn)) ");
  CHECK(Reading(typed_as_told(reading, text)).told() == "");
}

TEST_CASE("a page that stands among the things of the one before it begins at the left edge") {
  const std::string text = "page 3-5\n  blank\n  page 6\n    picture \"a.png\"\npage 7\n";
  const Reading reading(text);
  CHECK(reading.outline() == "page(blank) page(picture) page ");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message == "page begins at the left edge");
  CHECK(reading.problems[0].type[0].line == "page 6");
  CHECK(reading.problems[0].why == "2 spaces too many: a line that stands further in belongs to "
                                   "the one above it, here the page of line 1");
}

TEST_CASE("a picture at the left edge is told once, with what stands under it") {
  const Reading reading("page 6\npicture \"a.png\"\n    turn 3deg\n    describe \"A bath\"\n"
                        "  words \"so\" in body\n    turn 2deg\npage 7\n");
  CHECK(reading.told() ==
        "a.bodkin:2:1: error: the file's left edge has no picture; the page above it (line 1) has "
        "[not-here]\n"
        "  picture \"a.png\"\n"
        "  ~~~~~~~\n"
        "  why   2 spaces too few: this line stands beside the page instead of under it\n"
        "  type    picture \"a.png\"\n"
        "a.bodkin:1:1: note: what it belongs to\n");
  CHECK(reading.outline() == "page(picture(turn describe) words(turn)) page ");
}

TEST_CASE("a line between two levels stands with those that have its word") {
  const Reading reading("page 6\n  picture \"a.png\"\n    turn 3deg\n   words \"so\" in body\n"
                        "    turn 2deg\n");
  CHECK(reading.told() ==
        "a.bodkin:4:4: error: this line stands under none of the lines above it [not-here]\n"
        "  words \"so\" in body\n"
        "  ~~~~~~~~~~~~~~~~~~\n"
        "  why   lines that belong together begin one below the other; those near by stand as far "
        "in as line\n"
        "        2\n"
        "  type    words \"so\" in body\n"
        "a.bodkin:2:3: note: a line to stand below\n");
  CHECK(reading.outline() == "page(picture(turn) words(turn)) ");
}

TEST_CASE("a tab inside a line is a blank in the line to type") {
  const Reading reading("page 6\n  picture \"a.png\"\n    turn 3deg\n\tfills\tplace\n");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].type[0].line == "    fills place");
}

TEST_CASE("a word at its own place is the maker's own line") {
  CHECK(
      Reading("page 2\n  text plot from \"words/plot.md\"\n").told() ==
      "a.bodkin:2:3: error: a page has nothing called text; it stands under the file, at the "
      "left edge [unknown-word]\n"
      "  text plot from \"words/plot.md\"\n"
      "  ~~~~\n"
      "  why   under page stand: blank, stays, picture, words, credits, colophon, rule, patch, qr, "
      "lay,\n"
      "        hand, paste-up and folio\n"
      "  type  text plot from \"words/plot.md\"\n");
}

TEST_CASE("a file saved as UTF-16 is told so, and nothing else is said of it") {
  using namespace std::string_view_literals;
  const Reading reading("\xFF\xFE"
                        "e\0d\0i\0t\0i\0o\0n\0\n\0p\0a\0g\0e\0"sv);
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].check == "malformed-bytes");
  CHECK(reading.problems[0].message == "this file is saved as UTF-16, two bytes a letter");
}

TEST_CASE("a line with a byte of another encoding is read as far as it goes") {
  const Reading reading("edition \"Caf\xE9\"\n  size a5\n  budget \xA3"
                        "2 a copy\n  run 5 copies\n");
  CHECK(reading.outline() == "edition(size budget run) ");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message ==
        "byte 12 is no text in UTF-8, and 1 more line holds such bytes");
}
