#include "language/vocabulary.hpp"

#include "language/lexeme.hpp"
#include "language/reading.hpp"

#include <doctest/doctest.h>
#include <fstream>
#include <sstream>

using namespace bodkin;
using namespace bodkin::language;

namespace {

std::string file(const std::string &path) {
  std::ifstream in(path, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

} // namespace

TEST_CASE("the grammar of a line never goes round without consuming") {
  CHECK(grammar_faults() == 0);
}

TEST_CASE("every word's example reads without a problem under each of its parents") {
  std::size_t read = 0;
  for (const Entry &entry : vocabulary()) {
    std::istringstream parents{std::string(entry.under)};
    for (std::string parent; parents >> parent; ++read) {
      // A `says` alone opens a block.
      const std::string text = entry.example == "says"
                                   ? under(parent, "says") + "        Some words.\n"
                                   : under(parent, std::string(entry.example));
      const Reading reading(text);
      CHECK_MESSAGE(reading.told() == "", text);
      CHECK(reading.tree.statements.back().entry == &entry);
      CHECK_FALSE(reading.tree.statements.back().broken);
    }
  }
  CHECK(read > vocabulary().size());
}

TEST_CASE("no word stands twice under one parent") {
  for (const Entry &entry : vocabulary()) {
    std::istringstream parents{std::string(entry.under)};
    for (std::string parent; parents >> parent;)
      CHECK_MESSAGE(entry_of(entry.word, parent) == &entry, entry.word << " under " << parent);
  }
  CHECK(entry_of("at", "edition") == nullptr);
  CHECK(entry_of("at", "nowhere") == nullptr);
}

TEST_CASE("the nearest word is the one with the fewest slips, and none where all are far") {
  const std::vector<std::string_view> words{"describe", "turn", "tone", "at", "source"};
  CHECK(nearest("discribe", words) == "describe");
  CHECK(nearest("decsribe", words) == "describe");
  CHECK(nearest("trun", words) == "turn");
  CHECK(nearest("tnoe", words) == "tone");
  CHECK(nearest("sauce", words) == "source");
  CHECK(nearest("ax", words) == std::nullopt);
  CHECK(nearest("umbrella", words) == std::nullopt);
  CHECK(nearest("", words) == std::nullopt);
  CHECK(nearest(std::string(100'000, 'a'), words) == std::nullopt);
}

TEST_CASE("a word is explained in a maker's terms") {
  CHECK(explanation("cover") ==
        "cover, under edition\n"
        "\n"
        "  cover on NAME [in MODE]\n"
        "\n"
        "  The outermost sheet's stock, and how its four pages are printed.\n"
        "  It may stand several times.\n"
        "\n"
        "    NAME is a name: corner-copier: small letters, digits and hyphens\n"
        "    MODE is what it is printed in: black, colour\n"
        "\n"
        "  cover on board\n"
        "\n"
        "  Under it stand: only.\n");
  CHECK(explanation("umbrella") == "");
}

TEST_CASE("the committed reference is the table's") {
  CHECK(file(BODKIN_SOURCE_DIR "/stdlib/reference.md") == reference_page());
}
