#include "problems/checks.hpp"

#include "problems/characters.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

using namespace bodkin;

namespace {

std::size_t sentences_in(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++i)
    if ((text[i] == '.' || text[i] == '?') && (i + 1 == text.size() || text[i + 1] == ' '))
      ++count;
  return count;
}

// What stands between `check = "` and the next quote, in every source of the compiler.
std::set<std::string> checks_in_sources() {
  std::set<std::string> names;
  for (const auto &entry :
       std::filesystem::recursive_directory_iterator(BODKIN_SOURCE_DIR "/compiler")) {
    if (entry.path().extension() != ".cpp")
      continue;
    std::ifstream file(entry.path());
    const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    constexpr std::string_view before = "check = \"";
    for (std::size_t at = text.find(before); at != std::string::npos; at = text.find(before, at)) {
      at += before.size();
      names.insert(text.substr(at, text.find('"', at) - at));
    }
  }
  return names;
}

} // namespace

TEST_CASE("every check that a room reports has a page") {
  const std::set<std::string> names = checks_in_sources();
  REQUIRE(names.count("more-problems") == 1);
  for (const std::string &name : names) {
    CAPTURE(name);
    CHECK(check_named(name) != nullptr);
  }
}

TEST_CASE("checks come by name and each name once") {
  const auto all = all_checks();
  REQUIRE(all.size() > 80);
  for (std::size_t i = 1; i < all.size(); ++i) {
    CAPTURE(all[i].name);
    CHECK(all[i - 1].name < all[i].name);
  }
}

TEST_CASE("every check is found by its name") {
  for (const Check &check : all_checks())
    CHECK(check_named(check.name) == &check);
  CHECK(check_named("mixed-stocks") == nullptr);
  CHECK(check_named("") == nullptr);
  CHECK(check_named("zzz") == nullptr);
}

TEST_CASE("every page explains in sentences, says what to do and shows whole lines") {
  for (const Check &check : all_checks()) {
    CAPTURE(check.name);
    CHECK_FALSE(check.title.ends_with('.'));
    CHECK(sentences_in(check.page) >= 2);
    CHECK(sentences_in(check.mend) >= 1);
    CHECK(check.example.ends_with('\n'));
    CHECK(std::all_of(check.name.begin(), check.name.end(),
                      [](char c) { return c == '-' || (c >= 'a' && c <= 'z'); }));
  }
}

TEST_CASE("an explained check reads as a page") {
  const Check *check = check_named("decimal-comma");
  REQUIRE(check != nullptr);
  CHECK(explain_page(*check) ==
        "decimal-comma  (error)\n"
        "A number has a decimal comma\n"
        "\n"
        "A comma parts the pieces of a line, so 2,5cm reads as two things: a bare 2 and a\n"
        "length of five centimetres. Numbers have a point, as everywhere in the program.\n"
        "\n"
        "Write a point.\n"
        "\n"
        "    margins    2.5cm\n");
}

TEST_CASE("no line of a page is wider than eighty columns") {
  for (const Check &check : all_checks()) {
    CAPTURE(check.name);
    const std::string page = explain_page(check);
    for (std::size_t begin = 0; begin < page.size();) {
      const std::size_t end = page.find('\n', begin);
      CHECK(columns_of(std::string_view(page).substr(begin, end - begin)) <= 80);
      begin = end + 1;
    }
  }
}
