#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

// The pages that hold a rule, as "1 2 5".
std::string ruled(std::string_view list, std::string_view facts = "pages 12") {
  const Read r = read(
      small_edition(facts, fmt::format("page {}\n  rule 1pt black, 0in 0in to 1in 1in\n", list)));
  std::string out = r.found();
  for (std::size_t page = 1; page < r.edition().pages.size(); ++page)
    if (!r.edition().pages[page].elements.empty())
      out += fmt::format("{} ", page);
  return out;
}

std::string opened(const Read &r) {
  std::string out;
  for (std::size_t page = 1; page < r.edition().pages.size(); ++page)
    out += r.edition().pages[page].opened.somewhere() ? 'x' : '.';
  return out;
}

} // namespace

TEST_CASE("page lists name the pages that they say") {
  const std::pair<const char *, const char *> rows[] = {
      {"4", "4 "},
      {"2-3", "2 3 "},
      {"5, 8-11", "5 8 9 10 11 "},
      {"left", "2 4 6 8 10 12 "},
      {"right", "1 3 5 7 9 11 "},
      {"all", "1 2 3 4 5 6 7 8 9 10 11 12 "},
      {"all but 3-12", "1 2 "},
      {"left but 4, 6", "2 8 10 12 "},
      {"cover", "1 2 11 12 "},
      {"all but cover", "3 4 5 6 7 8 9 10 "},
      {"centre", "6 7 "},
      {"front-cover", "1 "},
      {"inside-front", "2 "},
      {"inside-back", "11 "},
      {"back-cover", "12 "},
      {"next", "1 "},
  };
  for (const auto &row : rows) {
    CAPTURE(row.first);
    CHECK(ruled(row.first) == row.second);
  }
}

TEST_CASE("an edition has as many pages as its highest number, unless it says how many") {
  CHECK(*read(small_edition("", "page 1\npage 7\n")).edition().page_count == 7);
  const Read r = read(small_edition("pages 8", "page 1\n"));
  CHECK(*r.edition().page_count == 8);
  CHECK(r.sources->text(r.edition().page_count.from) == "8");
}

TEST_CASE("page next is one after the highest page of the line above") {
  const Read r = read(small_edition("", "page next\npage 3, 9\npage next\nspread 12-13\npage next "
                                        "called last\npage 2\npage next but last\n"));
  CHECK(*r.edition().page_count == 14);
  CHECK(opened(r) == "xxx.....xx.xxx");
  CHECK(r.edition().pages[14].called == "last");
}

TEST_CASE("words that count from the last page need the number of pages written") {
  const Read r = read(small_edition("", "page back-cover\npage 3\n"));
  CHECK(r.found() == "error almanac.bodkin:18:6 missing-fact\n");
  CHECK(r.problems[0].message == "back-cover is only known where `pages` is written");
  CHECK(read(small_edition("", "page front-cover\npage inside-front\n")).found().empty());
}

TEST_CASE("a page above the last is an error, and never adds pages") {
  const Read r = read(small_edition("pages 8", "page 9\n"));
  CHECK(r.found() == "error almanac.bodkin:19:6 unknown-page\n");
  CHECK(r.problems[0].message == "page 9 comes after the last; the edition has 8 pages");
  CHECK(r.problems[0].type[0].line == "pages      12");
  CHECK(*r.edition().page_count == 8);
}

TEST_CASE("a page opened twice is an error with both lines and a page that is free") {
  const Read r =
      read(small_edition("", "page 1\npage 2\npage 1\n  rule 1pt black, 0in 0in to 1in 1in\n"
                             "page 3\n"));
  CHECK(r.found() == "error almanac.bodkin:20:6 page-twice\n");
  CHECK(r.problems[0].message == "page 1 is already made on line 18");
  CHECK(r.problems[0].type[0].line == "page 4");
  CHECK(r.edition().pages[1].elements.empty());
}

TEST_CASE("a page list repeats its elements on each of its pages") {
  const Read r = read(small_edition("", "page 2, 4\n  rule 1pt black, 0in 0in to 1in 1in\n"));
  CHECK(r.edition().elements.size() == 1);
  CHECK(r.edition().pages[2].elements == r.edition().pages[4].elements);
}

TEST_CASE("a name given by called stands wherever a page is asked for") {
  const Read r = read(small_edition("", "page 3, 5 called times\nrunning r\n  pages times\n"
                                        "  rule 1pt black, 0in 0in to 1in 1in\n"));
  CHECK(r.found().empty());
  CHECK(r.edition().pages[3].called == "times");
  CHECK(r.edition().pages[5].called.empty());
  CHECK(r.edition().runnings[0].on_page ==
        std::vector<bool>{false, false, false, true, false, false});
}

TEST_CASE("two pages of one name are an error") {
  const Read r = read(small_edition("", "page 1 called a\npage 2 called a\n"));
  CHECK(r.found() == "error almanac.bodkin:19:15 duplicate-name\n");
  CHECK(r.problems[0].message == "page 1 is called a already");
}

TEST_CASE("a spread is an even page and the next, or the two outsides") {
  const Read inside = read(small_edition("pages 8", "spread 4-5\n"));
  REQUIRE(inside.edition().spreads.size() == 1);
  CHECK(inside.edition().spreads[0].left == 4);
  CHECK(inside.edition().spreads[0].right == 5);
  CHECK(inside.edition().pages[5].spread == 0);
  const Read outside = read(small_edition("pages 8", "spread back-cover, front-cover\n"));
  REQUIRE(outside.edition().spreads.size() == 1);
  CHECK(outside.edition().spreads[0].left == 8);
  CHECK(outside.edition().spreads[0].right == 1);
}

TEST_CASE("two pages of one leaf are no spread") {
  const Read r = read(small_edition("pages 8", "spread 5-6\n"));
  CHECK(r.found() == "error almanac.bodkin:19:8 not-a-spread\n");
  CHECK(r.problems[0].type[0].line == "spread 4-5");
  CHECK(r.edition().spreads.empty());
}

TEST_CASE("a page's mode and machine are its own, else the cover's, else the edition's") {
  const Read r = read(small_edition("pages 8\ncover on plain in colour",
                                    "page 2 in black\npage 4 in colour by other\n"
                                    "machine other like copier\n"));
  CHECK(r.found().empty());
  const Edition &edition = r.edition();
  CHECK(*edition.pages[1].mode == Mode::colour);
  CHECK(*edition.pages[2].mode == Mode::black);
  CHECK(*edition.pages[3].mode == Mode::black);
  CHECK(edition.pages[3].mode.by_default());
  CHECK(*edition.pages[4].mode == Mode::colour);
  CHECK(edition[*edition.pages[4].machine].name == "other");
  CHECK(edition[*edition.pages[5].machine].name == "copier");
}

TEST_CASE("running matter stands on all but the cover, and never on pages left blank") {
  const Read r = read(small_edition("pages 8", "running r\n  rule 1pt black, 0in 0in to 1in 1in\n"
                                               "page 3-5\npage 6\n  blank\n"));
  CHECK(r.found().empty());
  CHECK(r.edition().runnings[0].on_page ==
        std::vector<bool>{false, false, false, true, true, true, false, false, false});
}

TEST_CASE("a page that is called blank and is not is an error") {
  const Read r = read(small_edition("", "page 1\n  blank\n  rule 1pt black, 0in 0in to 1in 1in\n"));
  CHECK(r.found() == "error almanac.bodkin:19:3 not-blank\n");
  CHECK_FALSE(r.edition().pages[1].blank);
}

TEST_CASE("an edition without a page is told so") {
  const Read r = read(small_edition("", ""));
  CHECK(r.found() == "error almanac.bodkin:1:1 missing-fact\n");
  CHECK(r.problems[0].message == "this edition has no page");
  CHECK(*r.edition().page_count == 0);
}

TEST_CASE("more pages than a library holds are a problem, whatever the lists say") {
  std::string lists = "page 20000\n";
  for (int i = 0; i < 2'000; ++i)
    lists += "page 1-20000\n";
  const Read r = read(small_edition("", lists));
  CHECK(r.problem("too-many-things"));
  CHECK(*r.edition().page_count == 20'000);
}
