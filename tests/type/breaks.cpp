#include "type/breaks.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <sstream>

namespace bodkin {
namespace {

void append_utf8(std::string &text, unsigned long c) {
  const auto byte = [&](unsigned long value) { text += static_cast<char>(value); };
  if (c < 0x80) {
    byte(c);
  } else if (c < 0x800) {
    byte(0xc0 | c >> 6);
    byte(0x80 | (c & 0x3f));
  } else if (c < 0x10000) {
    byte(0xe0 | c >> 12);
    byte(0x80 | (c >> 6 & 0x3f));
    byte(0x80 | (c & 0x3f));
  } else {
    byte(0xf0 | c >> 18);
    byte(0x80 | (c >> 12 & 0x3f));
    byte(0x80 | (c >> 6 & 0x3f));
    byte(0x80 | (c & 0x3f));
  }
}

// One line of Unicode's break tests: "× 0023 ÷ 0308 ÷  # …".
struct Row {
  std::string text;
  std::vector<std::uint32_t> breaks;
};

Row row_of(const std::string &line) {
  Row row;
  std::istringstream words(line.substr(0, line.find('#')));
  std::string word;
  while (words >> word) {
    if (word == "÷" && !row.text.empty())
      row.breaks.push_back(static_cast<std::uint32_t>(row.text.size()));
    else if (word != "÷" && word != "×")
      append_utf8(row.text, std::stoul(word, nullptr, 16));
  }
  return row;
}

std::vector<Row> rows_of(const std::string &path) {
  std::vector<Row> rows;
  std::istringstream lines(file_bytes(path));
  for (std::string line; std::getline(lines, line);)
    if (!line.empty() && line[0] != '#')
      rows.push_back(row_of(line));
  return rows;
}

std::vector<std::uint32_t> places(const std::vector<LineBreak> &breaks) {
  std::vector<std::uint32_t> at;
  for (const LineBreak &line : breaks)
    at.push_back(line.at);
  return at;
}

} // namespace

// Unicode 15.0, UAX #14: LineBreakTest.txt of Debian's unicode-data. ICU 72 differs by two rules of
// its own: no line ends after a hyphen that begins a word (8 rows), nor in a number after the point
// or comma that begins it (14 rows).
TEST_CASE("lines end where Unicode's own tests let them, but for leading hyphens and points") {
  Breaker breaker("en-GB");
  const std::vector<Row> rows = rows_of("/usr/share/unicode/auxiliary/LineBreakTest.txt");
  std::size_t hyphens = 0, numbers = 0;
  std::vector<LineBreak> breaks;
  for (const Row &row : rows) {
    breaker.lines(row.text, breaks);
    if (places(breaks) != row.breaks)
      ++(row.text.starts_with("-") ? hyphens : numbers);
  }
  CHECK(rows.size() == 7654);
  CHECK(hyphens == 8);
  CHECK(numbers == 14);
}

// Unicode 15.0, UAX #29: GraphemeBreakTest.txt of Debian's unicode-data.
TEST_CASE("letters stand apart where Unicode's own tests part them") {
  Breaker breaker("en-GB");
  std::vector<std::uint32_t> letters;
  const std::vector<Row> rows = rows_of("/usr/share/unicode/auxiliary/GraphemeBreakTest.txt");
  for (const Row &row : rows) {
    breaker.letters(row.text, letters);
    CHECK(letters == row.breaks);
  }
  CHECK(rows.size() == 602);
}

TEST_CASE("a line feed ends the line, a space lets it end") {
  Breaker breaker("en");
  std::vector<LineBreak> breaks;
  breaker.lines("a b\nc", breaks);
  REQUIRE(breaks.size() == 3);
  CHECK(breaks[0].at == 2);
  CHECK_FALSE(breaks[0].must);
  CHECK(breaks[1].at == 4);
  CHECK(breaks[1].must);
  CHECK(breaks[2].at == 5);
}

TEST_CASE("a language that nobody knows breaks by the common rules, whatever the machine speaks") {
  std::vector<LineBreak> breaks;
  Breaker("not a language at all").lines("night bus", breaks);
  CHECK(places(breaks) == std::vector<std::uint32_t>{6, 9});
  Breaker("").lines("night bus", breaks);
  CHECK(places(breaks) == std::vector<std::uint32_t>{6, 9});
}

} // namespace bodkin
