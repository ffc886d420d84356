#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

Read read_page(std::string_view lines, std::string_view facts = "") {
  return read(small_edition(facts, "page 1\n" + std::string(lines)), {{"a.png", "x"}});
}

constexpr std::string_view with_style = "face f from \"EB Garamond\"\nstyle s\n  face f 10/12\n";

} // namespace

TEST_CASE("a place without a size is asked for its size, and one without a point for its point") {
  const Read no_size = read_page("  picture \"a.png\"\n    at 1in 2in\n");
  CHECK(no_size.found() == "error almanac.bodkin:20:8 missing-part\n");
  CHECK(no_size.problems[0].message == "how large? a place is a point and a size");
  CHECK(no_size.problems[0].type[0].line == "at       1in 2in, 4in x 3in");
}

TEST_CASE("outer and inner edges, the foot and the middle stand in the model as written") {
  const Read r =
      read_page("  patch\n    at 1/2in from outer, 1/4in from foot, 2in x 1in\n"
                "    fill black\n  patch\n    at centred 1in, 2in x 1in\n    fill black\n");
  CHECK(r.found().empty());
  const At &first = std::get<At>(r.edition().elements[0].placement.where);
  CHECK(first.across.from == From::outer);
  CHECK(first.across.offset == Length::inches(1, 2));
  CHECK(first.down.from == From::end);
  CHECK(std::get<At>(r.edition().elements[1].placement.where).across.from == From::centred);
}

TEST_CASE("a folio needs no size, nor even a place") {
  const Read r =
      read(small_edition("", std::string(with_style) + "running r\n  folio in s\n"
                                                       "    at 1/2in from outer, 1/4in from foot\n"
                                                       "  folio in s\npage 1-4\n"));
  CHECK(r.found().empty());
  CHECK_FALSE(std::get<At>(r.edition().elements[0].placement.where).size);
  CHECK_FALSE(r.edition().elements[1].placement.written());
}

TEST_CASE("cells without a grid are an error with both ways out") {
  const Read r = read_page("  picture \"a.png\"\n    cells 1-2 by 1-3\n");
  CHECK(r.found() == "error almanac.bodkin:20:5 missing-fact\n");
  CHECK(r.problems[0].message == "this edition has no grid to count cells in");
  CHECK(r.problems[0].type[0].line == "grid       4 by 6, gap 1/8in");
}

TEST_CASE("cells past the grid are an error with the grid's own figures") {
  const Read r = read_page("  picture \"a.png\"\n    cells 1-5 by 1-3\n", "grid 4 by 6, gap 1/8in");
  CHECK(r.found() == "error almanac.bodkin:21:11 off-the-page\n");
  CHECK(r.problems[0].message == "the grid (line 6) has 4 columns and 6 rows");
}

TEST_CASE("one element with two places is an error at the second") {
  const Read r = read_page("  picture \"a.png\"\n    fits live\n    at 1in 1in, 2in x 2in\n");
  CHECK(r.found() == "error almanac.bodkin:20:5 two-places\n");
  const Read place = read_page("  picture \"a.png\"\n    fills place\n    at 1in 1in, 2in x 2in\n");
  CHECK(place.found().empty());
}

TEST_CASE("a patch, and words on a spread, need a place") {
  const Read patch = read_page("  patch\n    fill black\n");
  CHECK(patch.found() == "error almanac.bodkin:19:3 missing-fact\n");
  CHECK(patch.problems[0].message == "patch here needs a place");
  const Read words = read(small_edition(
      "", std::string(with_style) + "page 1\nspread 2-3\n  words \"x\" in s\npage 4\n"));
  REQUIRE(words.problem("missing-fact"));
  CHECK(words.problem("missing-fact")->message == "words on a spread need a place");
}

TEST_CASE("two runs of words that both fill the margins are an error with both lines") {
  const Read r = read(small_edition("", std::string(with_style) +
                                            "page 1\n  words \"a\" in s\n  words \"b\" in s\n"
                                            "  words \"c\" in s\n    at 1in 1in, 2in x 1in\n"));
  CHECK(r.found() == "error almanac.bodkin:23:3 two-fill-margins\n");
  CHECK(r.problems[0].message == "these words have no place, nor have those on line 22");
}

TEST_CASE("standing matter cannot lay itself, nor grow without end") {
  const Read loop = read(small_edition("", "standing a\n  lay b at 0in 0in\nstanding b\n"
                                           "  lay a at 0in 0in\npage 1\n"));
  CHECK(loop.found() == "error almanac.bodkin:21:3 lay-loop\n");
  std::string pieces;
  for (char c = 'a'; c < 'm'; ++c) {
    pieces += std::string("standing ") + c + "\n";
    for (int i = 0; i < 10; ++i)
      pieces += std::string("  lay ") + static_cast<char>(c + 1) + " at 0in 0in\n";
  }
  pieces += "standing m\n  rule 1pt black, 0in 0in to 1in 1in\n";
  const Read tower = read(small_edition("", pieces + "page 1\n  lay a at 0in 0in\n"));
  CHECK(tower.problem("too-many-things"));
}
