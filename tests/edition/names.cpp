#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

TEST_CASE("one name twice of one kind is an error with both lines") {
  const Read r = read(small_edition("", "stock plain\n  weight 80 gsm\n  sheet a4\npage 1\n"));
  CHECK(r.found() == "error almanac.bodkin:18:7 duplicate-name\n");
  CHECK(r.problems[0].message == "a paper called plain is already made on line 7");
  CHECK(r.problems[0].type[0].line == "stock plain-2");
  REQUIRE(r.problems[0].related.size() == 1);
  CHECK(r.sources->line_number(r.problems[0].related[0].range) == 7);
}

TEST_CASE("one name may stand for a thing of each kind") {
  const Read r = read(small_edition("", "face plain from \"EB Garamond\"\n"
                                        "style plain\n  face plain 10/12\n"
                                        "page 1\n  words \"x\" in plain\n"));
  CHECK(r.found().empty());
}

TEST_CASE("a paper that only the shelf holds is answered with the line that borrows it") {
  const Read r = read(small_edition("", "page 1 on pink-20\n"));
  CHECK(r.found() == "error almanac.bodkin:18:11 unknown-name\n");
  CHECK(r.problems[0].message == "no paper here is called pink-20");
  CHECK(r.problems[0].why == "the papers here: plain");
  REQUIRE(r.problems[0].type.size() == 1);
  CHECK(r.problems[0].type[0].line == "borrow \"stocks/us\"");
}

TEST_CASE("a colour that nobody knows is answered with the colours there are") {
  const Read r = read(small_edition("", "page 1\n  rule 1pt blakc, 1in 1in to 2in 1in\n"));
  CHECK(r.found() == "error almanac.bodkin:19:12 unknown-name\n");
  CHECK(r.problems[0].message == "no colour here is called blakc; did you mean black?");
  CHECK(r.problems[0].type[0].line == "rule 1pt black, 1in 1in to 2in 1in");
}

TEST_CASE("a paper's name is its tint") {
  const Read r = read(small_edition("", "stock rose like plain\n  tint #f3b3c0\n"
                                        "page 1 on rose\n  rule 1pt rose, 1in 1in to 2in 1in\n"));
  CHECK(r.found().empty());
  const Element &rule = r.edition()[r.edition().pages[1].elements[0]];
  CHECK(written(std::get<Rule>(rule.what).paint.colour) == "#f3b3c0");
}

TEST_CASE("what must be written and is not is asked for with the line to type") {
  const Read r = read("edition \"Bare\"\npage 1\n");
  CHECK(r.found() == "error almanac.bodkin:1:1 missing-fact\n"
                     "error almanac.bodkin:1:1 missing-fact\n"
                     "error almanac.bodkin:1:1 missing-fact\n"
                     "error almanac.bodkin:1:1 missing-fact\n");
  CHECK(r.problems[0].message == "this edition does not say its size");
  CHECK(r.problems[0].type[0].line == "size       half-letter");
  CHECK(r.problems[1].message == "this edition does not say its run");
  CHECK(r.problems[2].message == "this edition does not say its paper");
  CHECK(r.problems[3].message == "this edition does not say its machine");
}

TEST_CASE("a file without an edition is told what an edition is") {
  const Read r = read("stock a\n  weight 80 gsm\n  sheet a4\n");
  CHECK(r.found() == "error almanac.bodkin:1:1 missing-edition\n");
  CHECK_FALSE(r.reading.has_edition);
}

TEST_CASE("a manuscript that is not there is a problem in no file") {
  Sources sources;
  Problems problems;
  const Reading reading = read_edition("almanac.bodkin", MemoryFiles{}, sources, problems);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].message == "almanac.bodkin cannot be read");
  CHECK_FALSE(problems[0].range.somewhere());
  CHECK_FALSE(reading.has_edition);
}

TEST_CASE("no copies are no edition") {
  const Read r =
      read("edition \"None\"\n  size half-letter\n  run 0 copies\n  paper p\n  machine m\n"
           "stock p\n  weight 80 gsm\n  sheet letter\n"
           "machine m\n  prints black at $1 a side\npage 1\n");
  CHECK(r.found() == "error almanac.bodkin:3:7 number-too-small\n");
  CHECK(r.problems[0].message == "0 is too few; the least is 1");
  CHECK(r.edition().run->copies == 1);
}

TEST_CASE("own things that nothing uses are noted; borrowed ones are not") {
  const Read r = read("borrow \"styles/bookish\"\n" +
                      small_edition("", "face f from \"EB Garamond\"\n"
                                        "style lonely\n  face f 10/12\n"
                                        "source s\n  rights own\n"
                                        "text t\n  says \"x\"\n"
                                        "standing st\n  rule 1pt black, 1in 1in to 2in 1in\n"
                                        "machine idle like copier\npage 1\n"));
  CHECK(r.found() == "note almanac.bodkin:28:9 unused-thing\n"
                     "note almanac.bodkin:20:7 unused-thing\n"
                     "note almanac.bodkin:22:8 unused-thing\n"
                     "note almanac.bodkin:24:6 unused-thing\n"
                     "note almanac.bodkin:26:10 unused-thing\n");
  CHECK(r.problems[1].message == "nothing uses the style lonely");
  CHECK(r.problems[4].message == "nothing uses the standing piece st");
}
