#include "edition/reading.hpp"

#include <array>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <string>
#include <vector>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

constexpr std::array<const char *, 11> units{"a side",         "a sheet", "a copy",       "a plate",
                                             "a pass",         "a run",   "each",         "once",
                                             "per 500 sheets", "an hour", "per 500 sides"};

// A rate stands for {} in one of these lines.
struct Place {
  const char *edition; // facts under edition
  const char *rest;    // at the left edge
  std::vector<std::string> meant;
};

bool taken(const Place &place, const std::string &unit) {
  const std::string rate = "$1 " + unit;
  const Read read = tests::read(small_edition(fmt::format(fmt::runtime(place.edition), rate),
                                              fmt::format(fmt::runtime(place.rest), rate)));
  return !read.problem("priced-by-what");
}

void only_what_is_meant(const Place &place) {
  for (const std::string unit : units) {
    CAPTURE(unit);
    CHECK(taken(place, unit) ==
          (std::find(place.meant.begin(), place.meant.end(), unit) != place.meant.end()));
  }
}

} // namespace

TEST_CASE("paper is paid by the sheet or the pack, and a machine by the side") {
  only_what_is_meant({"", "stock card\n  costs {}\n", {"a sheet", "each", "per 500 sheets"}});
  only_what_is_meant(
      {"", "machine shop\n  prints black at {}\n", {"a side", "each", "per 500 sides"}});
}

TEST_CASE("a price is that of a copy, wherever it is sold") {
  only_what_is_meant({"price {}\n", "", {"a copy", "each"}});
  only_what_is_meant({"price $5\nsells 5 copies \"at a fair\", at {}\n", "", {"a copy", "each"}});
  CHECK(tests::read(small_edition("pages 4\nprice $5\n", "")).found() == "");
}

TEST_CASE("post is paid by the piece, and so is an envelope") {
  only_what_is_meant({"", "mail letter\n  step 100 g at {}\n", {"each"}});
  only_what_is_meant({"", "envelope kraft\n  costs {}\n", {"each"}});
}

TEST_CASE("a fee is paid once or by the copy") {
  only_what_is_meant({"", "source map\n  costs {}\n", {"once", "a run", "a copy", "each"}});
}

TEST_CASE("what is paid once for all the paper is told as a pack") {
  const Read pack = tests::read(small_edition("", "stock card\n  costs $18.50 once\n"));
  REQUIRE(pack.problem("priced-by-what"));
  CHECK(pack.problem("priced-by-what")->message ==
        "$18.50 once, and paper is bought by the sheet or by the pack");
  CHECK(pack.problem("priced-by-what")->type[0].line == "costs $18.50 per 500 sheets");
}

TEST_CASE("pay by the hour for work that takes no time is asked for its time") {
  const Read read = tests::read(small_edition("", "finish\n  fold all\n    costs $12 an hour\n"));
  REQUIRE(read.problem("priced-by-what"));
  CHECK(read.problem("priced-by-what")->message ==
        "$12 an hour, and nothing says how long it takes");
  CHECK(!tests::read(small_edition("", "finish\n  fold all\n    takes 20 s a copy\n"
                                       "    costs $12 an hour\n"))
             .problem("priced-by-what"));
}

TEST_CASE("one copy is one copy, to make, to sell and to give") {
  const Read read = tests::read(small_edition("pages 4\nprice $5\nsells 1 copy \"at a fair\"\n"
                                              "gives 1 copy \"to a friend\"\n",
                                              ""));
  CHECK(read.found() == "");
}

TEST_CASE("copies are counted as far as copies go, which is further than pages do") {
  CHECK(!tests::read(small_edition("counts 1-100000\n", "")).problem("number-too-big"));
  const Read many = tests::read(small_edition("counts 1-10000000\n", ""));
  REQUIRE(many.problem("number-too-big"));
  CHECK(many.problem("number-too-big")->message ==
        "1-10000000 is more copies than hands can fold; 1000000 is the most");
  const Read back = tests::read(small_edition("counts 20-1\n", ""));
  REQUIRE(back.problem("number-too-small"));
  CHECK(back.problem("number-too-small")->type[0].line == "counts     1-10");
}
