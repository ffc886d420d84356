#include "edition/prose_facts.hpp"
#include "edition/reading.hpp"
#include "language/vocabulary.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

constexpr std::string_view with_style = "face f from \"EB Garamond\"\nstyle s\n  face f 10/12\n";

Read read_words(std::string_view words, std::string_view facts = "", MoreFiles more = {}) {
  return read(small_edition(facts, fmt::format("{}page 1 called first\n{}", with_style, words)),
              more);
}

std::string said(const Read &r) {
  return plain_text(std::get<Prose>(std::get<Words>(r.edition().elements[0].what).words));
}

} // namespace

TEST_CASE("words stand in quotes as they are, without any marks read into them") {
  const Read r = read_words("  words \"*NIGHT* # BUS\" in s\n");
  CHECK(r.found().empty());
  CHECK(said(r) == "*NIGHT* # BUS");
}

TEST_CASE("words below says, in its short form, and from a file are prose") {
  CHECK(said(read_words("  words in s\n    says\n      One *left* glove.\n")) == "One left glove.");
  CHECK(said(read_words("  words in s\n    says \"One *left* glove.\"\n")) == "One left glove.");
  const Read file =
      read_words("  words in s from \"w/a.md\"\n", "", {{"w/a.md", "One *left* glove."}});
  CHECK(file.found().empty());
  CHECK(said(file) == "One left glove.");
}

TEST_CASE("words that say nothing, or say it twice, are an error") {
  const Read nothing = read_words("  words in s\n");
  CHECK(nothing.found() == "error almanac.bodkin:22:3 missing-part\n");
  CHECK(nothing.problems[0].message == "these words say nothing");
  const Read twice =
      read_words("  words in s from \"a.md\"\n    says \"x\"\n", "", {{"a.md", "y"}});
  CHECK(twice.found() == "error almanac.bodkin:22:3 same-fact-twice\n");
}

TEST_CASE("facts in prose are filled in as the edition writes them") {
  const Read r =
      read_words("  words in s\n    says\n"
                 "      [a](fact:title), [b](fact:subtitle), [c](fact:number), [d](fact:dated),\n"
                 "      [e](fact:maker), [f](fact:series), [g](fact:copies), [h](fact:price),\n"
                 "      [i](fact:pages), [j](page:first), [k](page:back-cover)\n",
                 "subtitle \"Sub\"\nnumber 4\ndated 2026-11\nmaker \"M\"\nseries \"S\"\nprice $5 a "
                 "copy\npages 8");
  CHECK(r.found().empty());
  CHECK(said(r) == "Test, Sub, 4, 2026-11, M, S, 10, $5, 8, 1, 8");
}

TEST_CASE("a fact that nobody knows, one that is not written, and a page that is not there") {
  const Read unknown = read_words("  words in s\n    says \"[7](fact:nubmer)\"\n");
  REQUIRE(unknown.problem("unknown-fact"));
  CHECK(unknown.problem("unknown-fact")->message ==
        "no fact is called nubmer; did you mean number?");
  CHECK(unknown.problem("unknown-fact")->type[0].line == "[7](fact:number)");
  const Read other = read_words("  words in s\n    says \"[10](fact:total)\"\n");
  REQUIRE(other.problem("unknown-fact"));
  CHECK(other.problem("unknown-fact")->type[0].line == "[10](fact:copies)");
  const Read unwritten = read_words("  words in s\n    says \"[7](fact:number)\"\n");
  REQUIRE(unwritten.problem("unknown-fact"));
  CHECK(unwritten.problem("unknown-fact")->message == "this edition does not say its number");
  const Read page = read_words("  words in s\n    says \"[7](page:frist)\"\n");
  REQUIRE(page.problem("unknown-page"));
  CHECK(page.problem("unknown-page")->message == "no page is called frist; did you mean first?");
}

TEST_CASE("words of a text know the text, its columns and where it goes on") {
  const Read r = read_words("  words of t in s\n    columns 2\n    continues 4\npage 4\n"
                            "  words of t in s\ntext t\n  says \"x\"\n");
  CHECK(r.found().empty());
  const Words &words = std::get<Words>(r.edition().elements[0].what);
  CHECK(r.edition().texts[at(std::get<TextId>(words.words))].name == "t");
  CHECK(words.columns == 2);
  CHECK(words.gap == Length::inches(1, 4));
  CHECK(**words.continues == 4);
}

TEST_CASE("explain tells every fact, and none that is not") {
  const std::string page = language::explanation("fact");
  for (const std::string_view name : {"title", "subtitle", "maker", "series", "dated", "number",
                                      "copies", "copy", "price", "pages"}) {
    CHECK(is_fact(name));
    CHECK(page.find(name) != std::string::npos);
  }
  const Read wrong = read_words("  words in s\n    says\n      [x](fact:umbrella)\n");
  CHECK(wrong.problems[0].why ==
        "facts in prose are title, subtitle, number, dated, maker, series, "
        "copies, price, pages and copy");
}

TEST_CASE("a fact that stands bare, and one in quotes, would be printed as they stand") {
  const Read bare = read_words("  words in s\n    says\n      Copy fact:copy of 20.\n");
  REQUIRE(bare.problems.size() == 1);
  CHECK(as_text(bare.problems[0], *bare.sources, false) ==
        "almanac.bodkin:24:12: warning: fact:copy is printed as it stands here [unknown-fact]\n"
        "  Copy fact:copy of 20.\n"
        "       ~~~~~~~~~\n"
        "  why   a fact is a link: in brackets what stands there till it is filled in, behind them "
        "the fact\n"
        "  type  [1](fact:copy)\n");
  const Read quoted = read_words("  words \"Copy [1](fact:copy)\" in s\n");
  CHECK(quoted.found() == "warning almanac.bodkin:22:9 unknown-fact\n");
  CHECK(quoted.problems[0].type[0].line == "words in s\n  says \"Copy [1](fact:copy)\"");
  CHECK(read_words("  words in s\n    says \"Copy [1](fact:copy)\"\n").found() == "");
  CHECK(read_words("  words in s\n    says\n      Copy [1](fact:copy), `fact:copy`.\n").found() ==
        "");
  CHECK(read_words("  words in s\n    says\n      In fact: copy this.\n").found() == "");
}

TEST_CASE("numbers beyond the copies are not said to be of so many") {
  const auto found = [](std::string_view counts, std::string_view words) {
    return read_words(fmt::format("  words in s\n    says\n      {}\n", words), counts);
  };
  const Read beyond = found("counts 21-30", "Copy [1](fact:copy) of [10](fact:copies)");
  REQUIRE(beyond.problem("counts-differ"));
  CHECK(beyond.problem("counts-differ")->message == "these words count up to copy 30 of 10");
  CHECK(beyond.problem("counts-differ")->type[0].line == "Copy [1](fact:copy)");
  CHECK(found("counts 21-30", "Copy [1](fact:copy)").found() == "");
  CHECK(found("counts 1-10", "Copy [1](fact:copy) of [10](fact:copies)").found() == "");
  CHECK(found("counts 21-30", "[10](fact:copies) copies were made.").found() == "");
}
