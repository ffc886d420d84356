// examples/mistakes/ shows what is said of every check; what it cannot show stands here.
#include "problems/checks.hpp"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>

using namespace bodkin;

namespace {

struct Elsewhere {
  std::string_view check, reason, test;
};
constexpr std::array elsewhere{
    Elsewhere{"borrowed-numbers", "`bodkin arrange` alone says so", "tests/command/arrange.test"},
    Elsewhere{"no-paper-face", "it takes a machine without faces", "tests/press/papers_told.cpp"},
    Elsewhere{"cannot-arrange", "`bodkin arrange` alone says so", "tests/command/arrange.test"},
    Elsewhere{"wrap-too-narrow", "it takes a gathered book", "tests/sheet/parts.cpp"},
    Elsewhere{"more-problems", "it takes a thousand problems", "tests/problems/sort.cpp"},
    Elsewhere{"sheets-taken-away", "it takes two compiles", "tests/command/example.test"},
    Elsewhere{"too-long-code", "it takes a line of 2,332 letters", "tests/command/hostile.test"},
    Elsewhere{"too-long-file", "it takes a text of 5 MB", "tests/edition/files.cpp"},
    Elsewhere{"too-many-things", "it takes millions of things", "tests/edition/pages.cpp"},
};

std::string text_of(const std::filesystem::path &path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

// What stands in brackets at the end of a line, in every whole output of the folder.
std::set<std::string> shown_in_mistakes() {
  std::set<std::string> names;
  for (const auto &entry :
       std::filesystem::directory_iterator(BODKIN_SOURCE_DIR "/examples/mistakes")) {
    if (entry.path().extension() != ".txt")
      continue;
    const std::string text = text_of(entry.path());
    for (std::size_t end = text.find("]\n"); end != std::string::npos;
         end = text.find("]\n", end + 1)) {
      const std::size_t begin = text.rfind('[', end) + 1;
      names.insert(text.substr(begin, end - begin));
    }
  }
  return names;
}

bool stands_elsewhere(std::string_view check) {
  return std::any_of(elsewhere.begin(), elsewhere.end(),
                     [&](const Elsewhere &other) { return other.check == check; });
}

} // namespace

TEST_CASE("every check is met by an edition of mistakes, or said to be tested elsewhere") {
  const std::set<std::string> shown = shown_in_mistakes();
  for (const Check &check : all_checks()) {
    CAPTURE(check.name);
    CHECK((shown.count(std::string(check.name)) == 1) != stands_elsewhere(check.name));
  }
}

TEST_CASE("what is said to be tested elsewhere is tested there") {
  for (const Elsewhere &other : elsewhere) {
    CAPTURE(other.check);
    CHECK(check_named(other.check) != nullptr);
    const std::string test = text_of(std::filesystem::path(BODKIN_SOURCE_DIR) / other.test);
    CHECK(test.find(other.check) != std::string::npos);
  }
}

TEST_CASE("nothing is shown in the editions of mistakes that has no page") {
  for (const std::string &name : shown_in_mistakes()) {
    CAPTURE(name);
    CHECK(check_named(name) != nullptr);
  }
}
