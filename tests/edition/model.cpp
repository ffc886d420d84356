#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;

namespace {

constexpr std::string_view whole = R"(edition "Lost Gloves"
  size       half-letter
  pages      4
  run        20 copies
  paper      plain
  machine    copier

stock plain
  weight     20 lb bond
  sheet      letter, grain long
  costs      $10 per 500 sheets

stock rose like plain
  weight     28 lb bond
  tint       #f3b3c0

machine copier
  prints     black at $0.10 a side

page 1 on rose
  patch
    at       1in 1in, 2in x 3in
    fill     black

page 3 called map
  patch
    at       1in 1in, 2in x 3in
    fill     black
)";

} // namespace

TEST_CASE("defaults are filled in and say that they are") {
  const auto of = read(whole);
  const Edition &edition = of.edition();
  CHECK(edition.folding->name == "saddle-stitch");
  CHECK(*edition.printing == Mode::black);
  CHECK(edition.printing.by_default());
  CHECK(edition.margins->outer == Length::inches(1, 2));
  CHECK(*edition.page_count == 4);
  CHECK_FALSE(edition.page_count.by_default());
}

TEST_CASE("like copies facts, and a written weight drops the copied caliper") {
  const auto of = read(whole);
  REQUIRE(of.edition().stocks.size() == 2);
  const Stock &rose = of.edition().stocks[1];
  CHECK(rose.name == "rose");
  CHECK(rose.caliper_estimated);
  CHECK(*rose.caliper == Length::inches(58, 10'000)); // 28 lb bond, a merchant's table
  REQUIRE(rose.costs);
  CHECK(origin_words(rose.costs->from, *of.sources) ==
        origin_words(of.edition().stocks[0].costs->from, *of.sources));
}

TEST_CASE("a page knows the paper that its line asks for") {
  const auto of = read(whole);
  REQUIRE(of.edition().pages.size() == 5);
  const Page &first = of.edition().pages[1];
  REQUIRE(first.asked.stock);
  CHECK(of.edition()[**first.asked.stock].name == "rose");
  CHECK(of.edition().pages[3].called == "map");
  CHECK_FALSE(of.edition().pages[2].opened.somewhere());
}

TEST_CASE("a name that is not there is a problem with the nearest") {
  std::string text(whole);
  text.replace(text.find("on rose"), 7, "on rosa");
  const auto of = read(text);
  const Problem *problem = of.problem("unknown-name");
  REQUIRE(problem);
  CHECK(problem->message.find("rose") != std::string::npos);
}

TEST_CASE("a page opened twice is a problem at the later line") {
  const auto of = read(std::string(whole) + "\npage 3\n  blank\n");
  REQUIRE(of.problem("page-twice"));
  CHECK(of.sources->line_number(of.problem("page-twice")->range) == 30);
}
