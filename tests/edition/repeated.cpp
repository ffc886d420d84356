#include "edition/repeated.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::size_t count(const Read &r, std::string_view check) {
  std::size_t found = 0;
  for (const Problem &problem : r.problems)
    found += problem.check == check;
  return found;
}

} // namespace

TEST_CASE("a name that nothing has is one problem, however many lines ask for it") {
  const Read r = read(small_edition("", "style boddy\n  face book 10/12\n"
                                        "page 1\n  words \"a\" in body\n"
                                        "page 2\n  words \"b\" in body\n"
                                        "page 3\n  words \"c\" in body\n"
                                        "face book from \"EB Garamond\"\n"));
  CHECK(count(r, "unknown-name") == 1);
  const Problem &problem = *r.problem("unknown-name");
  CHECK(problem.message == "no style here is called body; did you mean boddy?");
  CHECK(problem.why == "the styles here: boddy; asked for on lines 23 and 25 too");
  CHECK(problem.edits.size() == 3);
}

TEST_CASE("a name in two words is one problem: its first half is asked of nobody") {
  const Read page = read(small_edition("pages 8", "page back cover\n  blank\n"));
  CHECK(count(page, "unknown-kind") == 1);
  CHECK_FALSE(page.problem("unknown-page"));
  CHECK(page.problem("unknown-kind")->type[0].line == "page back-cover");
}

TEST_CASE("a page of prose is no manuscript, and that is all that is said of it") {
  Sources sources;
  Problems problems;
  MemoryFiles files;
  files.put("notes.md", "# Notes\n\nThe bus.\n\n* one\n* two\n\nWe ride.\n\n> Said.\n\nOff it.\n");
  read_edition("notes.md", files, sources, problems);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].check == "missing-edition");
  CHECK(problems[0].message ==
        "notes.md is no manuscript: 6 of its lines begin with no word of the language");
}
