// Texts that nobody writes: whatever the bytes, reading ends with a tree and problems.
#include "language/prose.hpp"
#include "language/reading.hpp"
#include "language/utf8.hpp"
#include "measure/limits.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::language;

namespace {

std::string many(std::string_view piece, std::size_t times) {
  std::string text;
  text.reserve(piece.size() * times);
  for (std::size_t i = 0; i < times; ++i)
    text += piece;
  return text;
}

Problems prose_problems(const std::string &text) {
  Sources sources;
  const FileId file = sources.add("a.md", text);
  Problems problems;
  read_prose(text, {file, {}, Offset{static_cast<std::uint32_t>(text.size())}}, sources, problems);
  return problems;
}

} // namespace

TEST_CASE("a million lines keep no more problems than the bound") {
  CHECK(Reading(many("x\n", 1'000'000)).problems.size() == limits::problems_kept);
  CHECK(Reading(many("page 2\n", 1'000'000)).tree.statements.size() == 1'000'000);
}

TEST_CASE("ten thousand levels are one problem") {
  std::string text;
  for (std::size_t i = 0; i < 10'000; ++i)
    text += std::string(i, ' ') + "page 2\n";
  const Reading reading("page 1\n" + text);
  CHECK(reading.problems.back().check != "");
  for (const Problem &problem : reading.problems)
    CHECK((problem.check == "too-deep" || problem.check == "unknown-word" ||
           problem.check == "not-here"));
  const std::string deep = "page 2\n  picture \"a.png\"\n" + many("  ", 70) + "turn 2deg\n";
  CHECK(Reading(deep).outline() == "page(picture(turn)) ");
}

TEST_CASE("a line of ten million bytes is read once") {
  for (const char *piece : {"1", "-", "\"", "\\\"", "“", "a,", "1 ", "1/", " ", "#", "½", "a-"}) {
    const std::string text = "page " + many(piece, 2'000'000) + "\nfinish\n";
    CHECK(Reading(text).outline().ends_with("finish "));
  }
}

TEST_CASE("malformed bytes are told once, and the other lines are read") {
  const Reading reading(std::string("page 1\nwor\xFF"
                                    "ds\npa") +
                        '\0' + "ge\npage 2\n");
  CHECK(reading.outline() == "page page ");
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems[0].message ==
        "byte 10 is no text in UTF-8, and 1 more line holds such bytes");
}

// Unicode 15.0, table 3-7.
TEST_CASE("well-formed UTF-8 is told from all else") {
  const auto malformed = [](std::string_view text) { return first_malformed(text); };
  constexpr std::size_t none = std::string_view::npos;
  CHECK(malformed("plain text of ASCII only") == none);
  CHECK(malformed("é½€😀") == none);
  CHECK(malformed(std::string_view("0123456\0", 8)) == 7);
  CHECK(malformed("01234567\xC0\x80") == 8);  // overlong
  CHECK(malformed("a\xED\xA0\x80") == 1);     // a surrogate
  CHECK(malformed("a\xF4\x90\x80\x80") == 1); // past U+10FFFF
  CHECK(malformed("a\xE2\x82") == 1);         // cut off
  CHECK(malformed("\x80") == 0);
}

TEST_CASE("prose nested without end is read as far as paper goes") {
  const Problems quotes = prose_problems(many("> ", 100'000) + "deep\n");
  REQUIRE(quotes.size() == 1);
  CHECK(quotes[0].check == "too-deep");
  CHECK(prose_problems(many("- ", 100'000) + "deep\n").size() == 1);
  CHECK(prose_problems(many("- ", 100'000) + "\n").empty()); // a line across
  std::string steps;
  for (std::size_t i = 0; i < 500; ++i)
    steps += std::string(2 * i, ' ') + "- a\n";
  CHECK(prose_problems(steps).size() == 1);
}

TEST_CASE("prose of nothing but signs ends soon") {
  for (const char *piece : {"*", "_a", "[", "![", "`", "<", "&#", "[a](", "*a **b", "\\"}) {
    const Problems problems = prose_problems(many(piece, 100'000));
    for (const Problem &problem : problems)
      CHECK((problem.check == "too-deep" || problem.check == "html-in-prose" ||
             problem.check == "image-in-prose"));
  }
}
