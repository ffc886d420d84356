#include "edition/renumbered.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

// Pages 4 to 7 of eight become 6, 7, 4 and 5.
const std::vector<int> swapped{0, 1, 2, 3, 6, 7, 4, 5, 8};

std::string renumbered_pages(std::string_view pages, const std::vector<int> &order = swapped) {
  const std::string before = small_edition("pages 8", "");
  const Read it = read(before + std::string(pages));
  return renumbered(it.edition(), FileId{0}, *it.sources, order).substr(before.size());
}

} // namespace

TEST_CASE("lines of pages and spreads get the new numbers, and nothing else changes") {
  CHECK(renumbered_pages("page 4 in colour    # the red one, page 4\n"
                         "  blank\n"
                         "\n"
                         "spread  6-7   called crossing\n"
                         "  rule 1pt black, 1in 1in to 2in 1in\n"
                         "page 1, 5\n"
                         "  blank\n") == "page 6 in colour    # the red one, page 4\n"
                                         "  blank\n"
                                         "\n"
                                         "spread  4-5   called crossing\n"
                                         "  rule 1pt black, 1in 1in to 2in 1in\n"
                                         "page 1, 7\n"
                                         "  blank\n");
}

TEST_CASE("a list whose pages change places among themselves stays as it is") {
  CHECK(renumbered_pages("page 3-8\n  blank\n") == "page 3-8\n  blank\n");
}

TEST_CASE("a list is written anew where its pages part") {
  CHECK(renumbered_pages("page 3-5\n  blank\n") == "page 3, 6-7\n  blank\n");
}

TEST_CASE("the page that a list names keeps its name") {
  CHECK(renumbered_pages("page 5-6 called moth\n  blank\n") == "page 7, 4 called moth\n  blank\n");
}

TEST_CASE("page next gets a number where it is no longer the next") {
  CHECK(renumbered_pages("page 3\n  blank\npage next\n  blank\npage next\n  blank\n") ==
        "page 3\n  blank\npage 6\n  blank\npage next\n  blank\n");
}

TEST_CASE("pages of running matter, where a text goes on, and stays with follow their pages") {
  CHECK(renumbered_pages("style body\n  face book 10/12\nface book from \"EB Garamond\"\n"
                         "running lines\n"
                         "  pages left, 5 but 4-5, cover\n"
                         "  rule 1pt black, 1in 1in to 2in 1in\n"
                         "text notes\n  says \"x\"\n"
                         "page 3\n"
                         "  words of notes in body\n"
                         "    continues 6\n"
                         "page 4\n"
                         "  stays with 5\n"
                         "page 6\n"
                         "  words of notes in body\n") ==
        "style body\n  face book 10/12\nface book from \"EB Garamond\"\n"
        "running lines\n"
        "  pages left, 7 but cover, 6-7\n"
        "  rule 1pt black, 1in 1in to 2in 1in\n"
        "text notes\n  says \"x\"\n"
        "page 3\n"
        "  words of notes in body\n"
        "    continues 4\n"
        "page 6\n"
        "  stays with 7\n"
        "page 4\n"
        "  words of notes in body\n");
}

TEST_CASE("an insert goes where its page went, and keeps its own numbers") {
  CHECK(renumbered_pages("insert map\n"
                         "  size letter\n"
                         "  goes on 4\n"
                         "  page 1\n"
                         "    blank\n"
                         "page 4\n"
                         "  blank\n") == "insert map\n"
                                         "  size letter\n"
                                         "  goes on 6\n"
                                         "  page 1\n"
                                         "    blank\n"
                                         "page 6\n"
                                         "  blank\n");
}

TEST_CASE("a borrowed file keeps its numbers, and the line to change by hand is told") {
  const Read it = read(small_edition("pages 8", "page 4\n  blank\n") + "borrow \"house.bodkin\"\n",
                       {{"house.bodkin", "running lines\n"
                                         "  pages    left, 4   # the letters\n"
                                         "  rule 1pt black, 1in 1in to 2in 1in\n"
                                         "running ends\n"
                                         "  pages 1, 8\n"
                                         "  rule 1pt black, 1in 1in to 2in 1in\n"}});
  const Problems told = borrowed_numbers(it.edition(), it.reading.files, *it.sources, swapped);
  REQUIRE(told.size() == 1);
  CHECK(told[0].message ==
        "house.bodkin is borrowed and keeps these numbers: pages left, 4, in this order left, 6");
  CHECK(it.sources->line_number(told[0].range) == 2);
  CHECK(told[0].type[0].line == "pages    left, 6   # the letters");
  CHECK(told[0].type[0].remark == "in house.bodkin, once the new order is taken");
}

} // namespace bodkin::tests
