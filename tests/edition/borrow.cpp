#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::string stock(std::string_view name, std::string_view grams) {
  return fmt::format("stock {}\n  weight {} gsm\n  sheet letter\n", name, grams);
}

std::string weight_of(const Read &r, std::string_view name) {
  for (const Stock &one : r.edition().stocks)
    if (one.name == name)
      return written(**one.weight);
  return "none";
}

} // namespace

TEST_CASE("the later of two borrowed files wins, with a note") {
  const Read r = read("borrow \"a.bodkin\"\nborrow \"b.bodkin\"\n" + small_edition("", "page 1\n"),
                      {{"a.bodkin", stock("rose", "70")}, {"b.bodkin", stock("rose", "90")}});
  CHECK(weight_of(r, "rose") == "90 gsm");
  CHECK(r.found() == "note b.bodkin:1:7 later-borrow\n");
  CHECK(r.problems[0].message ==
        "two borrowed files hold a paper called rose; this one counts, not line 1 of a.bodkin");
}

TEST_CASE("the edition's own wins over a borrowed one, with a note") {
  const Read r = read("borrow \"a.bodkin\"\n" + small_edition("", stock("rose", "80") + "page 1\n"),
                      {{"a.bodkin", stock("rose", "70")}});
  CHECK(weight_of(r, "rose") == "80 gsm");
  const Problem *note = r.problem("own-beats-shelf");
  REQUIRE(note);
  CHECK(note->kind == Kind::note);
  CHECK(note->message == "this paper takes the place of the borrowed rose (line 1 of a.bodkin)");
}

TEST_CASE("a file borrowed twice counts at its later place, and is read once") {
  const Read r = read("borrow \"a.bodkin\"\nborrow \"b.bodkin\"\nborrow \"a.bodkin\"\n" +
                          small_edition("", "page 1\n"),
                      {{"a.bodkin", stock("rose", "70")}, {"b.bodkin", stock("rose", "90")}});
  CHECK(weight_of(r, "rose") == "70 gsm");
}

TEST_CASE("a borrowed file's paths are counted from its own folder") {
  const Read r =
      read("borrow \"house/words.bodkin\"\n" +
               small_edition("", "page 1\n  words of t in s\n"
                                 "face f from \"EB Garamond\"\nstyle s\n  face f 10/12\n"),
           {{"house/words.bodkin", "text t from \"t.md\"\n"}, {"house/t.md", "Hello."}});
  CHECK(r.found().empty());
  CHECK(plain_text(r.edition().texts[0].prose) == "Hello.");
}

TEST_CASE("files that borrow each other in a circle are told so, with the way round") {
  const Read r =
      read("borrow \"a.bodkin\"\n" + small_edition("", "page 1\n"),
           {{"a.bodkin", "borrow \"b.bodkin\"\n"}, {"b.bodkin", "borrow \"a.bodkin\"\n"}});
  CHECK(r.found() == "error b.bodkin:1:8 borrow-loop\n");
  CHECK(r.problems[0].message == "this file is already being read: it would borrow itself");
  CHECK(r.problems[0].why ==
        "a.bodkin borrows b.bodkin borrows a.bodkin, and there is no end to it");
}

TEST_CASE("a manuscript that borrows itself is a circle too") {
  const Read r = read("borrow \"almanac.bodkin\"\n" + small_edition("", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:1:8 borrow-loop\n");
}

TEST_CASE("a shelf that is not there is answered with what is there") {
  const Read r = read("borrow \"stocks/uss\"\n" + small_edition("", "page 1\n"));
  CHECK(r.found() == "error almanac.bodkin:1:8 missing-shelf\n");
  CHECK(r.problems[0].message == "there is no stocks/uss on the shelf; did you mean stocks/us?");
  CHECK(r.problems[0].type[0].line == "borrow \"stocks/us\"");
}

TEST_CASE("of a shelf whose name is misspelt all that was meant is there") {
  const Read r = read("borrow \"stocks/uss\"\n" +
                      small_edition("cover on card", "stock card like cover-65\npage 1-4\n"));
  CHECK(r.found() == "error almanac.bodkin:1:8 missing-shelf\n");
}

TEST_CASE("a borrowed file holds no page, and the rest of it counts all the same") {
  const Read r = read("borrow \"a.bodkin\"\n" + small_edition("", "page 1 on rose\n"),
                      {{"a.bodkin", "page 2\n" + stock("rose", "70")}});
  CHECK(r.found() == "error a.bodkin:1:1 not-borrowed\n");
  CHECK(r.problems[0].message == "a borrowed file holds no page");
  CHECK(*r.edition().page_count == 1);
}

TEST_CASE("a long chain of borrowed files ends at a bound") {
  Read r;
  r.files.put("almanac.bodkin", "borrow \"f-0.bodkin\"\n" + small_edition("", "page 1\n"));
  for (int i = 0; i < 100; ++i)
    r.files.put(fmt::format("f-{}.bodkin", i), fmt::format("borrow \"f-{}.bodkin\"\n", i + 1));
  r.reading = read_edition("almanac.bodkin", r.files, *r.sources, r.problems);
  CHECK(r.problem("too-deep"));
  CHECK(*r.edition().page_count == 1);
}
