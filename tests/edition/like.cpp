#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

const Machine &machine(const Read &r, std::string_view name) {
  for (const Machine &one : r.edition().machines)
    if (one.name == name)
      return one;
  FAIL("no such machine");
  return r.edition().machines.front();
}

} // namespace

TEST_CASE("a written price replaces the copied prices of its ink only") {
  const Read r = read(small_edition("", "machine other like copier\n"
                                        "  prints black at $0.08 a side\n"
                                        "  prints black at $0.07 a side, from 500 sides\n"
                                        "page 1 by other\n"));
  CHECK(r.found().empty());
  const Machine &other = machine(r, "other");
  REQUIRE(other.prints.size() == 3);
  CHECK(other.prints[0].mode == Mode::colour);
  CHECK(written(other.prints[0].rate) == "$0.50 a side");
  CHECK(written(other.prints[1].rate) == "$0.08 a side");
  CHECK(other.prints[2].from_sides == 500);
}

TEST_CASE("a written weight drops a copied caliper") {
  const Read r = read(small_edition("", "stock card like measured\n  weight 200 gsm\n"
                                        "stock measured like plain\n  caliper 0.2mm\n"
                                        "page 1\n"));
  CHECK(r.found() == "note almanac.bodkin:18:7 unused-paper\n");
  CHECK(r.edition().stocks[1].name == "card");
  CHECK(r.edition().stocks[1].caliper_estimated);
  CHECK(*r.edition().stocks[1].caliper == estimated_caliper(**r.edition().stocks[1].weight));
  CHECK(*r.edition().stocks[2].caliper == Length::mm(1) / 5);
}

TEST_CASE("a written heading replaces the copied heading of its level only") {
  const Read r = read(small_edition("", "face f from \"EB Garamond\"\n"
                                        "style one\n  face f 10/12\n  heading 1 in one\n"
                                        "  heading 2 in one\n"
                                        "style two like one\n  heading 2 in two\n"
                                        "page 1\n  words \"x\" in two\n"));
  CHECK(r.found().empty());
  const Style &two = r.edition().styles[1];
  CHECK(r.edition()[**two.headings[0]].name == "one");
  CHECK(r.edition()[**two.headings[1]].name == "two");
  CHECK_FALSE(two.headings[2]);
}

TEST_CASE("things that are like each other in a circle are an error, and only that") {
  const Read r =
      read(small_edition("", "stock a like b\nstock b like c\nstock c like a\npage 1\n"));
  CHECK(r.found() == "error almanac.bodkin:20:14 like-loop\n");
  CHECK(r.problems[0].message == "this paper is like itself");
  CHECK(r.problems[0].why == "a is like b is like c is like a, so none of them has facts to copy");
}

TEST_CASE("like an unknown thing is one problem, not three") {
  const Read r = read(small_edition("", "stock a like plian\npage 1\n"));
  CHECK(r.found() == "error almanac.bodkin:18:14 unknown-name\n"
                     "note almanac.bodkin:18:7 unused-paper\n");
  CHECK(r.problems[0].message == "no paper here is called plian; did you mean plain?");
  CHECK(r.problems[0].type[0].line == "stock a like plain");
}

TEST_CASE("a chain of likes longer than anyone follows ends at a bound") {
  std::string stocks;
  for (int i = 0; i < 200; ++i)
    stocks += fmt::format("stock s-{} like s-{}\n", i, i + 1);
  const Read r = read(small_edition("", stocks + "stock s-200 like plain\npage 1\n"));
  CHECK(r.problem("too-deep"));
  CHECK(r.edition().stocks.size() == 202);
}
