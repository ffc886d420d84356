#include "problems/excerpt.hpp"

#include "problems/characters.hpp"
#include "problems/manuscript.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

// The line, a line end, the underline.
std::string shown(std::string text, std::size_t begin, std::size_t end, int columns = 40) {
  Sources sources;
  const FileId file = sources.add("a.bodkin", std::move(text));
  const Excerpt excerpt = excerpt_of(range_at(file, begin, end), sources, columns);
  return excerpt.line + "\n" + excerpt.underline;
}

} // namespace

TEST_CASE("the underline stands under wide characters as wide as they are") {
  CHECK(shown("\"夜バス\" in body", 1, 10) == "\"夜バス\" in body\n"
                                              " ~~~~~~");
  CHECK(shown("\"夜バス\" in body", 15, 19) == "\"夜バス\" in body\n"
                                               "            ~~~~");
}

TEST_CASE("marks that stand on a letter take no column of the underline") {
  CHECK(shown("e\u0301te\u0301 in body", 11, 15) == "e\u0301te\u0301 in body\n"
                                                    "       ~~~~");
}

TEST_CASE("tabs inside a line open to every eighth column") {
  CHECK(shown("at\t1in 1in", 3, 6) == "at      1in 1in\n"
                                      "        ~~~");
  CHECK(shown("    at\t1in", 7, 10) == "at  1in\n"
                                       "    ~~~");
}

TEST_CASE("indentation stays where the problem is about it") {
  CHECK(shown("  \tat 1in", 2, 3) == "        at 1in\n"
                                     "  ~~~~~~");
}

TEST_CASE("a place between two characters is one column wide") {
  CHECK(shown("at 1in", 3, 3) == "at 1in\n"
                                 "   ~");
  CHECK(shown("at 1in\nx", 6, 6) == "at 1in\n"
                                    "      ~");
  CHECK(shown("", 0, 0) == "\n~");
}

TEST_CASE("a range over several lines is underlined to its first line's end") {
  CHECK(shown("page 1\r\n  blank\n", 5, 14) == "page 1\n"
                                               "     ~");
}

TEST_CASE("a line as wide as the window is shown whole") {
  CHECK(shown("0123456789", 8, 10, 10) == "0123456789\n"
                                          "        ~~");
}

TEST_CASE("a long line is cut behind words near its beginning") {
  CHECK(shown("0123456789abcdef", 2, 4, 10) == "012345678…\n"
                                               "  ~~");
}

TEST_CASE("a long line is cut on both sides of words in its middle") {
  CHECK(shown("0123456789abcdefghijklmnopqrst", 14, 16, 10) == "…cdefghij…\n"
                                                               "   ~~");
}

TEST_CASE("a long line is cut before words at its end") {
  CHECK(shown("0123456789abcdef", 14, 16, 10) == "…cdef\n"
                                                 "   ~~");
}

TEST_CASE("words longer than the window are underlined as far as it shows") {
  CHECK(shown("0123456789abcdefghijklmnopqrst", 4, 30, 10) == "…23456789…\n"
                                                              "   ~~~~~~");
}

TEST_CASE("of a line of millions of bytes only the part around the words is read") {
  const std::string text = std::string(3'000'000, 'a') + " umbrella " + std::string(3'000'000, 'b');
  const std::string out = shown(text, 3'000'001, 3'000'009, 40);
  CHECK(out == "…aaaaaaaaa umbrella bbbbbbbbbbbbbbbbbbb…\n"
               "           ~~~~~~~~");
}

TEST_CASE("malformed bytes are shown and underlined") {
  CHECK(shown("at \xFF\xFE 1in", 3, 5) == "at \uFFFD\uFFFD 1in\n"
                                          "   ~~");
}
