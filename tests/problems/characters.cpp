#include "problems/characters.hpp"

#include <doctest/doctest.h>
#include <fstream>
#include <vector>

using namespace bodkin;

namespace {

std::vector<char32_t> codes(std::string_view text) {
  std::vector<char32_t> out;
  for (std::size_t at = 0; at < text.size();) {
    const Character character = character_at(text, at);
    out.push_back(character.code);
    at += character.bytes;
  }
  return out;
}

using Codes = std::vector<char32_t>;
constexpr char32_t bad = 0xFFFD;

} // namespace

TEST_CASE("characters of one to four bytes are read") {
  CHECK(codes("a½€🌙") == Codes{'a', 0xBD, 0x20AC, 0x1F319});
}

// The Unicode Standard 15.0, table 3-7, says which byte sequences are well-formed.
TEST_CASE("malformed bytes read as one U+FFFD each") {
  CHECK(codes("\x80z") == Codes{bad, 'z'});                            // a trailing byte alone
  CHECK(codes("\xC0\xAFz") == Codes{bad, bad, 'z'});                   // longer than needed
  CHECK(codes("\xE0\x9F\xBFz") == Codes{bad, bad, bad, 'z'});          // longer than needed
  CHECK(codes("\xED\xA0\x80z") == Codes{bad, bad, bad, 'z'});          // a surrogate
  CHECK(codes("\xF4\x90\x80\x80z") == Codes{bad, bad, bad, bad, 'z'}); // past U+10FFFF
  CHECK(codes("\xF0\x9F\x8C") == Codes{bad, bad, bad});                // broken off
  CHECK(codes("\xF5z") == Codes{bad, 'z'});
}

TEST_CASE("the edges of each length are well-formed") {
  CHECK(codes("\x7F\xC2\x80\xDF\xBF") == Codes{0x7F, 0x80, 0x7FF});
  CHECK(codes("\xE0\xA0\x80\xEF\xBF\xBF") == Codes{0x800, 0xFFFF});
  CHECK(codes("\xF0\x90\x80\x80\xF4\x8F\xBF\xBF") == Codes{0x10000, 0x10FFFF});
}

TEST_CASE("characters are written as they were read") {
  const std::string text = "a\u07FF\u0800\uFFFD\U00010000\U0010FFFF";
  std::string out;
  for (const char32_t code : codes(text))
    append_utf8(out, code);
  CHECK(out == text);
}

TEST_CASE("a terminal gives wide characters two columns and marks none") {
  CHECK(columns_of("umbrella") == 8);
  CHECK(columns_of("夜のバス") == 8);
  CHECK(columns_of("ｂｕｓ") == 6);
  CHECK(columns_of("e\u0301") == 1);    // e and a combining acute
  CHECK(columns_of("½ … → “") == 7);    // ambiguous ones are narrow
  CHECK(columns_of("co\u00ADop") == 5); // a soft hyphen is drawn
  CHECK(columns_of("a\u200Db") == 2);   // a joiner is not
}

// Unicode's own EastAsianWidth.txt, from Debian's unicode-data.
TEST_CASE("every line of EastAsianWidth.txt marked wide or full-width is two columns wide") {
  std::ifstream file("/usr/share/unicode/EastAsianWidth.txt");
  REQUIRE(file.good());
  int checked = 0;
  for (std::string line; std::getline(file, line);) {
    const std::size_t semicolon = line.find(';');
    if (line.empty() || line[0] == '#' || semicolon == std::string::npos)
      continue;
    const char width = line[semicolon + 1];
    const auto first = static_cast<char32_t>(std::stoul(line, nullptr, 16));
    const bool mark = line.find("# Mn") != std::string::npos ||
                      line.find("# Me") != std::string::npos ||
                      line.find("# Cf") != std::string::npos;
    if (mark || first < 0x20)
      continue;
    CAPTURE(line);
    CHECK(columns_of(first) == (width == 'W' || width == 'F' ? 2 : 1));
    ++checked;
  }
  CHECK(checked > 2000);
}

TEST_CASE("nothing from a file can move a terminal's cursor") {
  CHECK(harmless("a\x1b[2Jb") == "a␛[2Jb");
  CHECK(harmless(std::string_view("\0\t\n\r\x7F", 5)) == "␀␉␊␍␡");
  CHECK(harmless("\u009B31m") == "\uFFFD31m");
}

TEST_CASE("nothing from a file can turn the reading direction of a report") {
  CHECK(harmless("a\u202Eb\u2066c\u200Fd") == "a\uFFFDb\uFFFDc\uFFFDd");
  CHECK(harmless("שלום") == "שלום");
}
