// An editor that applies the edits of a problem must leave the line that the problem says to type.
#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <iterator>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::string text_of(const std::filesystem::path &path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// Blanks that line words up do not count.
std::string single_spaced(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c != ' ' || (!out.empty() && out.back() != ' ' && out.back() != '\n'))
      out += c;
  return out;
}

const std::filesystem::path mistakes = BODKIN_SOURCE_DIR "/examples/mistakes";

} // namespace

TEST_CASE("the edits of a problem leave the line that it says to type") {
  std::size_t judged = 0;
  for (const char *name :
       {"typing", "names", "files", "words", "pages", "sheets", "folds", "money", "paper"}) {
    const Inspected it = walked(text_of(mistakes / (std::string(name) + ".bodkin")),
                                {{"shop.bodkin", text_of(mistakes / "shop.bodkin")},
                                 {"art/moon.svg", text_of(mistakes / "art/moon.svg")},
                                 {"art/photo.jpg", text_of(mistakes / "art/photo.jpg")},
                                 {"words/notes.md", text_of(mistakes / "words/notes.md")}});
    Problems all = it.before;
    all.insert(all.end(), it.problems.begin(), it.problems.end());
    for (const Problem &problem : all) {
      if (problem.edits.empty())
        continue;
      CAPTURE(name);
      CAPTURE(problem.message);
      REQUIRE_FALSE(problem.type.empty());
      const std::string after = single_spaced(edited(problem, *it.read.sources));
      CHECK(after.find(single_spaced(problem.type.front().line)) != std::string::npos);
      ++judged;
    }
  }
  CHECK(judged >= 45);
}
