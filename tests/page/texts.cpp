#include "page/composing.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

// Four words, a line each; every box holds one line of 12 points.
constexpr std::string_view text = "text t\n  says\n    one\\\n    two\\\n    three\\\n    four\n";

std::string box(int page, std::string_view more = "") {
  return fmt::format("page {}\n  words of t in body\n    at 1in 1in, 2in x 12pt\n{}", page, more);
}

} // namespace

TEST_CASE("a text runs through its boxes in page order, wherever they are written") {
  const auto pages = composed("pages 4", std::string(text) + box(3) + box(1) + box(4) + box(2));
  CHECK(pages->lines(1) == "one");
  CHECK(pages->lines(2) == "two");
  CHECK(pages->lines(3) == "three");
  CHECK(pages->lines(4) == "four");
  CHECK(pages->told().empty());
}

TEST_CASE("`continues` takes a text on to another page, then page order again") {
  const auto pages = composed("pages 4", std::string(text) + box(1, "    continues 3\n") + box(3) +
                                             box(4) + "page 2\n  blank\n");
  CHECK(pages->lines(1) == "one");
  CHECK(pages->lines(3) == "two");
  CHECK(pages->lines(4) == "three");
  CHECK(pages->told() == "left-over-text");
}

TEST_CASE("a text that goes on backwards fills each box once") {
  const auto pages = composed("pages 4", std::string(text) + box(1, "    continues 4\n") + box(2) +
                                             box(3) + box(4, "    continues 2\n"));
  CHECK(pages->lines(1) == "one");
  CHECK(pages->lines(4) == "two");
  CHECK(pages->lines(2) == "three");
  CHECK(pages->lines(3) == "four");
}

TEST_CASE("circles, pages without the text and places never reached are told") {
  CHECK(composed("pages 4", std::string(text) + box(1) + box(2, "    continues 1\n"))->told() ==
        "text-loop left-over-text");
  CHECK(composed("pages 4",
                 std::string(text) + box(1, "    continues 3\n") + box(2) + box(3) + box(4))
            ->told() == "place-never-reached left-over-text");
}

TEST_CASE("columns are filled one after another") {
  const auto pages = composed(
      "pages 4", std::string(text) + "page 1\n  words of t in body\n    at 1in 1in, 3in x 24pt\n"
                                     "    columns 2, gap 1/2in\n");
  CHECK(pages->lines(1) == "one|two|three|four");
  const auto &lines = std::get<SetWords>(pages->drawings[1].items[0].what).lines;
  CHECK(lines[0].left == Length());
  // (216 − 36) / 2 + 36
  CHECK(lines[2].left == Length::points(126));
  CHECK(lines[2].top == Length());
}

TEST_CASE(
    "a text runs from the book into what lies between its pages, and what is loose comes last") {
  const std::string bound = "insert fold\n  size half-letter\n  folding flat\n  paper plain\n"
                            "  up 2\n  goes after 2\n  page 1\n    words of t in body\n"
                            "      at 1in 1in, 2in x 12pt\n";
  const std::string loose = "insert card\n  size 3in x 4in\n  paper plain\n  up most\n  page 1\n"
                            "    words of t in body\n      at 1in 1in, 1in x 12pt\n";
  const auto book = composed("pages 4", loose + bound + std::string(text) + box(1) + box(3));
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(book->edition(), *book->read.sources, problems);
  const std::vector<Drawings> drawings =
      compose_copy(parts, *book->read.sources, *book->gallery, *book->compositor, problems);
  REQUIRE(parts.size() == 3);
  const auto first_line = [&](std::size_t part, int page) {
    const auto &words = std::get<SetWords>(drawings[part][page].items.front().what);
    return words.lines.front().runs.front().text;
  };
  CHECK(first_line(0, 1) == "one");
  CHECK(first_line(2, 1) == "two");
  CHECK(first_line(0, 3) == "three");
  CHECK(first_line(1, 1) == "four");
}
