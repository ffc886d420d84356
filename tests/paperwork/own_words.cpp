#include "paperwork/own_words.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

constexpr const char *styles = "face book from \"EB Garamond\"\n"
                               "style label\n  face book 8/10\n";

struct Written {
  Read read;
  Problems problems;
  // What stands in the first element of that name, blocks parted by an empty line.
  std::string says(std::string_view name) const {
    for (const Element &element : read.edition().elements)
      if (name_of(element) == name)
        return plain_text(std::get<Prose>(std::get<Words>(element.what).words));
    return "none";
  }
};

Written written_words(std::string_view facts, const std::string &rest) {
  Written it{read("borrow \"licences/open\"\n" + small_edition(facts, styles + rest),
                  {{"art/moon.png", ""}, {"art/sea.png", ""}}),
             {}};
  write_own_words(it.read.reading.edition, *it.read.sources, it.problems);
  return it;
}

} // namespace

TEST_CASE("a colophon tells copies, machine, papers, faces, work, maker and price in sentences") {
  const Written it =
      written_words("number 4\nseries \"Almanacs\"\ndated 2026-11\n"
                    "maker \"Wet Umbrella Press\"\nprice $5 a copy\nlanguage en-GB\n"
                    "cover on board in colour\nlicence \"CC BY 4.0\"",
                    "stock board \"White card\" like plain\n"
                    "page 1-8\n"
                    "  colophon in label\n"
                    "finish\n  fold all\n  staple 2, leg 1/4in, 2in from head and foot\n");
  CHECK(it.read.found() == "");
  CHECK(it.problems.empty());
  CHECK(it.says("colophon") ==
        "Test, number 4 of Almanacs, November 2026, in 10 copies. Printed in black and colour on "
        "the copier. Papers: white card and plain. Set in EB Garamond. Folded and stapled by "
        "hand. Made by Wet Umbrella Press. $5 a copy. Given out under CC BY 4.0: "
        "https://creativecommons.org/licenses/by/4.0/.");
}

namespace {

// Eight copies plain and two fine ones on other paper, each with a price and a finish of its own.
Written two_runs(std::string_view facts, const std::string &pages) {
  std::string text =
      small_edition("price $3 a copy\nprice $9 a copy\n  only fine\n" + std::string(facts),
                    styles + std::string("stock laid \"Laid paper\" like plain\n") + pages +
                        "finish\n  fold all\n  staple 2, leg 1/4in, 2in from head and foot\n"
                        "    only plain\n  sew 3 holes, 1in from head and foot\n    only fine\n");
  text.replace(text.find("run 10 copies\n"), 14,
               "run 8 copies called plain\n  run 2 copies called fine\n");
  Written it{read(text), {}};
  write_own_words(it.read.reading.edition, *it.read.sources, it.problems);
  return it;
}

std::string colophon_in(const Edition &edition) {
  for (const Element &element : edition.elements)
    if (name_of(element) == "colophon")
      return plain_text(std::get<Prose>(std::get<Words>(element.what).words));
  return "none";
}

} // namespace

TEST_CASE("on a sheet of its own each run's colophon tells its own facts") {
  const Written it = two_runs("paper laid\n  only fine\n", "page 1-4\n  colophon in label\n");
  CHECK(it.read.found() == "");
  CHECK(colophon_in(it.read.edition()) ==
        "Test, in 10 copies, of which this is one of the 8 plain. Printed in black on the copier. "
        "Paper: plain. Set in EB Garamond. Folded and stapled by hand. $3 a copy.");
  REQUIRE(it.read.edition().pieces.size() == 1);
  CHECK(colophon_in(it.read.edition().pieces.front()->edition) ==
        "Test, in 10 copies, of which this is one of the 2 fine. Printed in black on the copier. "
        "Paper: Laid paper. Set in EB Garamond. Folded and sewn by hand. $9 a copy.");
}

TEST_CASE("on a sheet that runs share the colophon tells what is alike, and then of each its own") {
  const Written it =
      two_runs("cover on laid\n  only fine\npages 8\n", "page 1-2, 4-8\n  words \"Rain\" in label\n"
                                                        "page 3\n  colophon in label\n");
  const std::string both =
      "Test, in 10 copies, 8 plain and 2 fine. Printed in black on the copier. Paper: plain. "
      "Set in EB Garamond. Folded by hand. Plain: stapled; $3 a copy. Fine: also on Laid paper; "
      "sewn; $9 a copy.";
  CHECK(colophon_in(it.read.edition()) == both);
  CHECK(colophon_in(it.read.edition().pieces.front()->edition) == both);
}

TEST_CASE("a colophon on several pages is true on each of them") {
  const Written it =
      two_runs("cover on laid\n  only fine\npages 8\n", "page 1, 3\n  colophon in label\n"
                                                        "page 2, 4-8\n  words \"Rain\" in label\n");
  CHECK(colophon_in(it.read.edition()).starts_with("Test, in 10 copies, 8 plain and 2 fine."));
}

TEST_CASE("an insert that one run has tells of that run's copies") {
  const Written it = two_runs("", "page 1-4\n  words \"Rain\" in label\n"
                                  "insert card\n  only fine\n  size 4in x 3in\n  page 1\n"
                                  "    colophon in label\n");
  CHECK(colophon_in(it.read.edition().pieces.front()->edition)
            .starts_with("Test, in 10 copies, of which this is one of the 2 fine."));
}

TEST_CASE("a colophon tells what is done by hand, and where it stands") {
  const Written it = written_words("cover on plain\nimpression 2\n",
                                   "page 1\n  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n"
                                   "page 2\n  colophon in label\n"
                                   "page 3\n  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n"
                                   "  hand signature \"of the maker\"\n"
                                   "page 4\n  hand number \"in pencil\"\n"
                                   "finish\n  fold all\n");
  CHECK(it.says("colophon") ==
        "Test, second printing, in 10 copies. Printed in black on the copier. Paper: plain. "
        "Set in EB Garamond. Folded by hand; stamped on page 3 and the cover; signed on page 3; "
        "numbered.");
}

TEST_CASE("where nothing is folded the first work says that it is done by hand") {
  const Written it = written_words("", "page 1-3\n  colophon in label\n"
                                       "page 4\n  hand colour \"the roofs in red\"\n"
                                       "  hand tip-in \"a feather\"\n"
                                       "  words in label\n    at 1in 1in, 2in x 1in\n"
                                       "    says \"[1](fact:copy)\"\n");
  CHECK(it.says("colophon") ==
        "Test, in 10 copies. Printed in black on the copier. Paper: plain. Set in EB Garamond. "
        "Coloured by hand on page 4; a leaf tipped in on page 4; numbered.");
}

TEST_CASE("an American colophon writes color and its dates as there") {
  const Written it = written_words("dated 2026-11-25\nlanguage en-US\nprinting colour",
                                   "page 1-4\n  colophon in label\n");
  CHECK(it.says("colophon") == "Test, November 25, 2026, in 10 copies. Printed in color on the "
                               "copier. Paper: plain. Set in EB Garamond.");
}

TEST_CASE("credits name each source by its pages, and say what a licence asks to be said") {
  const Written it = written_words(
      "", "source card\n  title \"Harbour at night\"\n  author \"A. Ferrier\"\n"
          "  published 1907, US\n  kept-by \"the town museum\"\n  rights public-domain\n"
          "source sea\n  author \"B. Sand\"\n  rights licence \"CC-BY-4.0\"\n"
          "source theirs\n  credit \"Photograph by C. Pier.\"\n  rights permission\n"
          "source ours\n  author \"Us\"\n  rights own\n"
          "page 1\n  picture \"art/moon.png\"\n    source card\n"
          "  picture \"art/moon.png\"\n    source ours\n"
          "page 2\n  picture \"art/sea.png\"\n    source sea\n    crop 0% 0%, 50% x 50%\n"
          "    tone grey\n"
          "page 3\n  picture \"art/moon.png\"\n    source card\n"
          "  picture \"art/sea.png\"\n    source theirs\n"
          "page 4\n  credits in label\n");
  CHECK(it.read.found().empty());
  CHECK(
      it.says("credits") ==
      "Pages 1 and 3: Harbour at night, by A. Ferrier, published in 1907, kept by the town museum, "
      "in the public domain.\n\n"
      "Page 2: B. Sand, under CC BY 4.0 (https://creativecommons.org/licenses/by/4.0/), cropped "
      "and put in grey here.\n\n"
      "Page 3: Photograph by C. Pier.");
}

TEST_CASE(
    "credits name pages of pieces in words, and the work's own link where it asks for a credit") {
  const Written it = written_words(
      "", "source sea\n  author \"B. Sand\"\n  link \"https://example.org/sea\"\n"
          "  rights licence \"CC-BY-4.0\"\n"
          "source free\n  author \"C. Pier\"\n  link \"https://example.org/pier\"\n"
          "  rights public-domain\n"
          "wrap on plain\n  page front-cover\n    picture \"art/sea.png\"\n      source sea\n"
          "insert map \"The routes\"\n  size 3in x 4in\n  paper plain\n  goes loose\n"
          "  page 1\n    picture \"art/moon.png\"\n      source free\n"
          "page 1, 3-4\n  picture \"art/sea.png\"\n    source sea\n"
          "page 2\n  credits in label\n");
  CHECK(it.says("credits") ==
        "Front cover; pages 1, 3 and 4: B. Sand, https://example.org/sea, under CC BY 4.0 "
        "(https://creativecommons.org/licenses/by/4.0/).\n\n"
        "The routes, page 1: C. Pier, in the public domain.");
}

TEST_CASE("an edition in another language, and credits of nothing, are noted") {
  const Written it = written_words("language fr", "page 1\n  credits in label\n");
  REQUIRE(it.problems.size() == 2);
  CHECK(it.problems[0].message ==
        "these credits are written in English; the edition's language is fr");
  CHECK(it.problems[1].message ==
        "these credits are empty: nothing on a page has a source that wants naming");
}

TEST_CASE("a capital that may be a name's stays in the colophon's sentence") {
  const Written it =
      written_words("cover on laid", "machine press \"Mangle's old press\" like copier\n"
                                     "stock laid \"Ferrier wove paper\" like plain\n"
                                     "stock sky \"Pale blue paper\" like plain\n"
                                     "page 1-2, 4-8 by press\n  colophon in label\n"
                                     "page 3 on sky by press\n");
  CHECK(it.says("colophon") ==
        "Test, in 10 copies. Printed in black on the Mangle's old press. Papers: Ferrier "
        "wove paper and pale blue paper. Set in EB Garamond.");
}

TEST_CASE("cards for the table in another language's edition are noted, at their own line") {
  const Written it = written_words("language fr\nprice $5 a copy\ncards 8", "page 1-4\n");
  REQUIRE(it.problems.size() == 1);
  CHECK(it.problems[0].message ==
        "these cards are written in English; the edition's language is fr");
  CHECK(it.read.sources->text(it.problems[0].range) == "8");
}

TEST_CASE("what is written on a piece's page stands in the piece as in the whole") {
  const Written it = written_words("", "page 1-4\n"
                                       "insert card\n  size 4in x 3in\n  page 1\n"
                                       "    colophon in label\n");
  const Edition &edition = it.read.edition();
  REQUIRE(edition.pieces.size() == 1);
  const Edition &card = edition.pieces[0]->edition;
  const auto &words = std::get<Words>(card.elements.back().what);
  CHECK(words.by == WrittenBy::colophon);
  CHECK(plain_text(std::get<Prose>(words.words)) == it.says("colophon"));
}

TEST_CASE("a credit that asks to be given is found in credits, or in words that hold the name") {
  const std::string source = "source sea\n  author \"B. Sand\"\n  rights licence \"CC-BY-4.0\"\n";
  const auto credited = [&](const std::string &page) {
    const Written it = written_words("", source + page);
    return CreditsGiven(it.read.edition()).name(it.read.edition().sources.front());
  };
  CHECK(credited("page 1\n  credits in label\n"));
  CHECK(credited("page 1\n  words \"Sea by B. Sand, cut out\" in label\n"));
  CHECK(credited("text last from \"words/last.md\"\npage 1\n  words of last in label\n") == false);
  CHECK_FALSE(credited("page 1\n  words \"Sea by nobody\" in label\n"));
}
