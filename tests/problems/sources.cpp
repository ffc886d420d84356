#include "problems/sources.hpp"

#include "problems/manuscript.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

LineColumn place(std::string text, std::size_t offset) {
  Sources sources;
  const FileId file = sources.add("a.bodkin", std::move(text));
  return sources.where(file, static_cast<Offset>(offset));
}

} // namespace

TEST_CASE("lines and columns count from one") {
  CHECK(place("page 1\n  blank\n", 0) == LineColumn{1, 1});
  CHECK(place("page 1\n  blank\n", 6) == LineColumn{1, 7});
  CHECK(place("page 1\n  blank\n", 9) == LineColumn{2, 3});
  CHECK(place("page 1\n  blank\n", 15) == LineColumn{3, 1});
}

TEST_CASE("an offset past the end is the end") { CHECK(place("page 1", 400) == LineColumn{1, 7}); }

TEST_CASE("an empty file has one empty line") {
  Sources sources;
  const FileId file = sources.add("a.bodkin", "");
  CHECK(sources.where(file, Offset{0}) == LineColumn{1, 1});
  CHECK(sources.line(file, 1) == "");
}

TEST_CASE("columns count characters, not bytes") {
  CHECK(place("\"Käse\" x", 8) == LineColumn{1, 8});    // ä is two bytes
  CHECK(place("\"夜バス\" x", 12) == LineColumn{1, 7}); // three characters of three bytes
  CHECK(place("\"🌙\" x", 7) == LineColumn{1, 5});       // four bytes
}

TEST_CASE("an offset inside a character stands where the character does") {
  CHECK(place("夜x", 0) == LineColumn{1, 1});
  CHECK(place("夜x", 1) == LineColumn{1, 1});
  CHECK(place("夜x", 2) == LineColumn{1, 1});
  CHECK(place("夜x", 3) == LineColumn{1, 2});
}

TEST_CASE("each malformed byte counts as one character") {
  CHECK(place("\xFF\xFEx", 2) == LineColumn{1, 3});
  CHECK(place("\xE5\xA4x", 2) == LineColumn{1, 3});
}

TEST_CASE("a byte-order mark is no character of the first line") {
  CHECK(place("\xEF\xBB\xBFpage 1\n", 0) == LineColumn{1, 1});
  CHECK(place("\xEF\xBB\xBFpage 1\n", 3) == LineColumn{1, 1});
  CHECK(place("\xEF\xBB\xBFpage 1\n", 8) == LineColumn{1, 6});
  Sources sources;
  const FileId file = sources.add("a.bodkin", "\xEF\xBB\xBFpage 1\n");
  CHECK(sources.line(file, 1) == "page 1");
}

TEST_CASE("a line comes without its end, whichever it is") {
  Sources sources;
  const FileId file = sources.add("a.bodkin", "one\r\ntwo\n\nfour");
  CHECK(sources.line(file, 1) == "one");
  CHECK(sources.line(file, 2) == "two");
  CHECK(sources.line(file, 3) == "");
  CHECK(sources.line(file, 4) == "four");
  CHECK(sources.line(file, 5) == "");
  CHECK(sources.line(file, 0) == "");
}

TEST_CASE("columns of a very long line are counted as those of a short one") {
  std::string text = "x\n";
  for (int i = 0; i < 20'000; ++i)
    text += "é€🌙a"; // 2 + 3 + 4 + 1 bytes: every mark falls inside some character
  Sources sources;
  const FileId file = sources.add("a.bodkin", text);
  for (const unsigned character : {0u, 1u, 4095u, 4096u, 40'000u, 79'999u}) {
    const std::size_t rest[] = {0, 2, 5, 9};
    const std::size_t offset = 2 + character / 4 * 10 + rest[character % 4];
    CHECK(sources.where(file, static_cast<Offset>(offset)) == LineColumn{2, character + 1});
  }
}

TEST_CASE("the words of a range are cut to the file") {
  Sources sources;
  const FileId file = sources.add("a.bodkin", "page 6 on cream");
  CHECK(sources.text(range_of(sources, file, "cream")) == "cream");
  CHECK(sources.text(range_at(file, 10, 99)) == "cream");
  CHECK(sources.text(range_at(file, 99, 120)) == "");
}

TEST_CASE("what stands in no file has no place, name or words") {
  const Sources sources;
  CHECK(sources.where(FileId::none, Offset{3}) == LineColumn{0, 0});
  CHECK(sources.name(FileId::none) == "");
  CHECK(sources.text(Range{}) == "");
}

TEST_CASE("the shelf is known by its name") {
  Sources sources;
  CHECK(sources.is_shelf(sources.add("stdlib/stocks/us.bodkin", "")));
  CHECK_FALSE(sources.is_shelf(sources.add("almanac.bodkin", "")));
}
