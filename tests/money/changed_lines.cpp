#include "money/changed_lines.hpp"
#include "money/money_lines.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

std::string line_after(std::string text, auto change) {
  Sources sources;
  const FileId file = sources.add("almanac.bodkin", std::move(text));
  ChangedLines lines(sources);
  change(lines, LineKey{file, 1});
  return lines.text();
}

std::string colour_out(std::string text, bool colour_is_default = false) {
  return line_after(std::move(text), [&](ChangedLines &lines, LineKey key) {
    lines.colour_out(key, colour_is_default);
  });
}

std::string changed(std::string text, Currency currency) {
  Sources sources;
  const FileId file = sources.add("almanac.bodkin", std::move(text));
  return with_money_in(sources, {file, Offset{0}, Offset{1}}, currency);
}

} // namespace

TEST_CASE("colour goes out of a line with the word before it, and the comment with it") {
  CHECK(colour_out("page 3 in colour") == "page 3");
  CHECK(colour_out("page 3 called moon  in  color on rose # in colour") ==
        "page 3 called moon on rose");
  CHECK(colour_out("  cover      on board in colour") == "cover      on board");
}

TEST_CASE(
    "colour becomes black where a default would bring it back, or where the line is about it") {
  CHECK(colour_out("page 3 in colour", true) == "page 3 in black");
  CHECK(colour_out("printing   colour") == "printing   black");
}

TEST_CASE("a page says black once, before its paper and its machine") {
  const auto in_black = [](std::string text) {
    return line_after(std::move(text),
                      [](ChangedLines &lines, LineKey key) { lines.in_black(key); });
  };
  CHECK(in_black("page 3 called on-rose on rose by copier") ==
        "page 3 called on-rose in black on rose by copier");
  CHECK(in_black("page 3-4 by copier # inside") == "page 3-4 in black by copier");
  CHECK(in_black("spread 4-5 in colour") == "spread 4-5 in black");
  CHECK(in_black("page 3 in black") == "page 3 in black");
}

TEST_CASE("a hash within a word or a text begins no comment") {
  CHECK(colour_out("page 3#4 in colour") == "page 3#4");
  CHECK(colour_out("note \"a # b\" in colour") == "note \"a # b\"");
}

TEST_CASE("a paper is renamed where it is asked for, not where a page bears its name") {
  CHECK(line_after("page 4 called rose on rose", [](ChangedLines &lines, LineKey key) {
          lines.rename(key, "rose", "cream");
        }) == "page 4 called rose on cream");
}

TEST_CASE("the copies of a run change and its spares stay") {
  CHECK(line_after("run        50 copies, 3 spare", [](ChangedLines &lines, LineKey key) {
          lines.first_number(key, 64);
        }) == "run        64 copies, 3 spare");
}

TEST_CASE("an amount in another money keeps its figures and the rest of the line") {
  CHECK(changed("costs      $14.75 per 250 sheets", currency_of("GBP")) ==
        "costs      £14.75 per 250 sheets");
  CHECK(changed("prints black at 0.12 CAD a side, from 500 sides", currency_of("USD")) ==
        "prints black at $0.12 a side, from 500 sides");
  CHECK(changed("prints black at €0.12, from 500 sides", currency_of("CAD")) ==
        "prints black at 0.12 CAD, from 500 sides");
}

TEST_CASE("a changed line that begins as another does is told by its number") {
  Sources sources;
  const FileId file = sources.add("almanac.bodkin", "edition \"x\"\n"
                                                    "  cover      on board in colour\n"
                                                    "  cover      on straw in colour\n"
                                                    "  run        20 copies\n"
                                                    "page 1 in colour\n"
                                                    "insert card\n"
                                                    "  page 1 in colour\n");
  const auto places = [&](std::initializer_list<std::uint32_t> numbers) {
    ChangedLines lines(sources);
    for (const std::uint32_t number : numbers)
      lines.colour_out({file, number}, false);
    return lines.places();
  };
  CHECK(places({5}) == "");
  CHECK(places({2}) == "");
  ChangedLines papers(sources);
  papers.rename({file, 2}, "board", "white");
  CHECK(papers.places() == "in place of line 2");
  papers.rename({file, 3}, "straw", "white");
  CHECK(papers.places() == "in place of lines 2 and 3");
  papers.first_number({file, 4}, 30);
  CHECK(papers.places() == "`cover` in place of lines 2 and 3");
}

} // namespace bodkin::tests
