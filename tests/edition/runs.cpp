// Numbers of copies, and what one of several runs has in place of the others'.
#include "edition/reading.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/piece.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

constexpr std::string_view fine = "stock fine\n"
                                  "  weight 24 lb bond\n"
                                  "  sheet letter, grain long\n"
                                  "  costs $20 per 500 sheets\n";

// Eight plain copies and two fine ones, on another paper if `facts` say so.
std::string two_runs(std::string_view facts, std::string_view rest) {
  std::string text = small_edition(facts, std::string(fine) + std::string(rest));
  const std::string_view one = "run 10 copies\n";
  return text.replace(text.find(one), one.size(),
                      "run 8 copies called plain\n  run 2 copies, 1 spare called fine\n");
}

constexpr std::string_view pages = "page 1-4\n"
                                   "  patch\n"
                                   "    at 1in 1in, 1in x 1in\n"
                                   "    fill black\n";

} // namespace

// Derived: a run's copies are counted on from those of the runs before it.
TEST_CASE("copies are counted through the runs, and spares have no place in the count") {
  const Read read = tests::read(two_runs("counts 101-110\n", pages));
  const Edition &edition = read.edition();
  const CopiesCounted fine_ones = copies_of(edition, 1);
  CHECK(fine_ones.all() == 3);
  CHECK(number_of(edition, fine_ones.place(0)) == "109");
  CHECK(number_of(edition, fine_ones.place(1)) == "110");
  CHECK(number_of(edition, fine_ones.place(2)) == "___");
  CHECK(copies_of(edition, {}).good == 10);
}

TEST_CASE("the number of a copy is filled in with the first, and set anew for each") {
  const Read read = tests::read(small_edition("counts 7-16\n", "style body\n"
                                                               "  face book 10/12\n"
                                                               "face book from \"EB Garamond\"\n"
                                                               "page 1-4\n"
                                                               "  words in body\n"
                                                               "    says\n"
                                                               "      Copy [1](fact:copy).\n"));
  const Element &words = read.edition().elements.front();
  REQUIRE(bears_number(words));
  const Prose &prose = std::get<Prose>(std::get<Words>(words.what).words);
  CHECK(plain_text(prose) == "Copy 7.");
  CHECK(plain_text(with_number(prose, "12")) == "Copy 12.");
}

TEST_CASE("a text that runs through boxes cannot hold the number of a copy") {
  const Read read = tests::read(
      small_edition("", "text story\n  says \"Copy [1](fact:copy)\"\n" + std::string(pages)));
  REQUIRE(read.problem("number-in-a-text"));
  CHECK(read.problem("number-in-a-text")->message ==
        "the number of a copy stands in story, a text that runs through boxes");
}

TEST_CASE("more copies than a file has pages for get no printed number") {
  const Read read =
      tests::read(small_edition("", "style body\n  face book 10/12\n"
                                    "face book from \"EB Garamond\"\n"
                                    "page 1-4\n  words in body\n    says \"[1](fact:copy)\"\n"));
  CHECK(read.problem("number-too-big") == nullptr);
  std::string many = small_edition("", "style body\n  face book 10/12\n"
                                       "face book from \"EB Garamond\"\n"
                                       "page 1-4\n  words in body\n    says \"[1](fact:copy)\"\n");
  many.replace(many.find("run 10 copies"), 13, "run 5001 copies");
  const Read too_many = tests::read(many);
  REQUIRE(too_many.problem("number-too-big"));
  CHECK(too_many.problem("number-too-big")->message ==
        "5001 copies are more than get a printed number of their own; 5000 is the most");
}

TEST_CASE("a run with another paper has a book of its own, on it") {
  const Read read = tests::read(two_runs("paper fine\n  only fine\n", pages));
  CHECK(read.found() == "");
  REQUIRE(read.edition().pieces.size() == 1);
  const Piece &other = *read.edition().pieces.front();
  CHECK(other.is_other_book());
  CHECK(other.name == "fine");
  CHECK(read.edition()[*read.edition().paper].name == "plain");
  CHECK(other.edition[*other.edition.paper].name == "fine");
  CHECK(other.matter_of == std::vector<std::uint32_t>(5, 0));
}

TEST_CASE("printing and cover of one run are settled on its own pages") {
  const Read read =
      tests::read(two_runs("printing colour\n  only fine\ncover on fine\n  only fine\n", pages));
  CHECK(read.found() == "");
  REQUIRE(read.edition().pieces.size() == 1);
  const Edition &other = read.edition().pieces.front()->edition;
  CHECK(*other.pages[3].mode == Mode::colour);
  CHECK(*read.edition().pages[3].mode == Mode::black);
  CHECK(other.cover_stock.has_value());
  CHECK_FALSE(read.edition().cover_stock.has_value());
}

TEST_CASE("matter of one run stands on its pages alone") {
  const Read read = tests::read(two_runs("", "page 1\n"
                                             "  patch\n"
                                             "    at 1in 1in, 1in x 1in\n"
                                             "    fill black\n"
                                             "  patch\n"
                                             "    only fine\n"
                                             "    at 3in 1in, 1in x 1in\n"
                                             "    fill black\n"
                                             "page 2-4\n"
                                             "  patch\n"
                                             "    at 1in 1in, 1in x 1in\n"
                                             "    fill black\n"));
  CHECK(read.found() == "note almanac.bodkin:19:7 unused-paper\n");
  CHECK(read.edition().pages[1].elements.size() == 1);
  REQUIRE(read.edition().pieces.size() == 1);
  const Piece &other = *read.edition().pieces.front();
  CHECK(other.edition.pages[1].elements.size() == 2);
  CHECK(other.matter_of == std::vector<std::uint32_t>{0, 1, 0, 0, 0});
}

TEST_CASE("a text that has another box in one run runs on otherwise in all its boxes") {
  const Read read = tests::read(two_runs("", "style body\n  face book 10/12\n"
                                             "face book from \"EB Garamond\"\n"
                                             "text story\n  says \"Once, twice.\"\n"
                                             "page 1\n"
                                             "  words of story in body\n"
                                             "page 2\n"
                                             "  words of story in body\n"
                                             "    only fine\n"
                                             "  patch\n"
                                             "    at 1in 1in, 1in x 1in\n"
                                             "page 3\n"
                                             "  words of story in body\n"
                                             "page 4\n"
                                             "  patch\n"
                                             "    at 1in 1in, 1in x 1in\n"));
  REQUIRE(read.edition().pieces.size() == 1);
  CHECK(read.edition().pieces.front()->matter_of == std::vector<std::uint32_t>{0, 1, 1, 1, 0});
}

TEST_CASE("two lines for one run, and a run that none is left for, are told") {
  CHECK(tests::read(two_runs("paper fine\n", pages)).problem("same-fact-twice")->message ==
        "paper is already written on line 5");
  const Read twice = tests::read(two_runs("price $3 a copy\nprice $9 a copy\n", pages));
  REQUIRE(twice.problem("same-fact-twice"));
  const std::string line = twice.problem("same-fact-twice")->type[0].line;
  CHECK(line == "price $9 a copy\n  only       fine");
  CHECK(tests::read(two_runs("price $3 a copy\nprice $9 a copy\n  only fine\n", pages))
            .problem("same-fact-twice") == nullptr);
  std::string none = two_runs("", pages);
  none.replace(none.find("  paper plain\n"), 14, "  paper plain\n    only plain\n");
  const Read read = tests::read(none);
  REQUIRE(read.problem("missing-fact"));
  CHECK(read.problem("missing-fact")->message == "the copies fine have no paper");
}

TEST_CASE("of two runs the one without a name is typed anew, and of two of one name the later") {
  const Read unnamed = tests::read(small_edition("run 5 copies called gold\n", ""));
  REQUIRE(unnamed.problem("same-fact-twice"));
  CHECK(unnamed.problem("same-fact-twice")->type[0].line == "run 10 copies called plain");
  CHECK(unnamed.problem("same-fact-twice")->type[0].remark == "instead of line 3");
  const Read alike = tests::read(two_runs("run 5 copies called fine\n", pages));
  REQUIRE(alike.problem("same-fact-twice"));
  CHECK(alike.problem("same-fact-twice")->type[0].line == "run 5 copies called fine-too");
}

TEST_CASE("a page that only one run has anything on is blank in the others, which is told") {
  const Read read = tests::read(two_runs("", "page 1-3\n"
                                             "  patch\n"
                                             "    at 1in 1in, 1in x 1in\n"
                                             "    fill black\n"
                                             "page 4\n"
                                             "  patch\n"
                                             "    only fine\n"
                                             "    at 1in 1in, 1in x 1in\n"
                                             "    fill black\n"));
  REQUIRE(read.problem("empty-in-a-run"));
  CHECK(read.problem("empty-in-a-run")->message == "page 4 is blank in the copies plain");
}

TEST_CASE("one run cannot have other matter on an insert that all have") {
  const Read read = tests::read(two_runs("", std::string(pages) + "insert card\n"
                                                                  "  size quarter-letter\n"
                                                                  "  folding flat\n"
                                                                  "  page 1\n"
                                                                  "    patch\n"
                                                                  "      only fine\n"
                                                                  "      fill black\n"));
  REQUIRE(read.problem("only-in-a-piece"));
  CHECK(read.problem("only-in-a-piece")->message ==
        "one run cannot have another insert than the others");
}

TEST_CASE("standing matter of one run is not laid on an insert that all have") {
  const std::string_view star = "standing star\n"
                                "  patch\n"
                                "    only fine\n"
                                "    at 0in 0in, 1in x 1in\n"
                                "    fill black\n";
  const auto card = [&](std::string_view only) {
    return std::string(pages) + std::string(star) + "insert card\n" + std::string(only) +
           "  size quarter-letter\n"
           "  folding flat\n"
           "  page 1\n"
           "    lay star at 1in 1in\n";
  };
  const Read all = tests::read(two_runs("", card("")));
  REQUIRE(all.problem("only-in-a-piece"));
  CHECK(all.problem("only-in-a-piece")->message ==
        "what one run alone has is laid on card, which all copies have");
  CHECK(tests::read(two_runs("", card("  only fine\n"))).problem("only-in-a-piece") == nullptr);
}

namespace {

constexpr std::string_view set_in_body = "style body\n  face book 10/12\n"
                                         "face book from \"EB Garamond\"\n";

std::string first_words(const Edition &edition) {
  for (const Element &element : edition.elements)
    if (const auto *words = std::get_if<Words>(&element.what))
      if (const auto *prose = std::get_if<Prose>(&words->words))
        return plain_text(*prose);
  return "none";
}

} // namespace

TEST_CASE("words that tell the price tell each run's copies their own") {
  const Read read = tests::read(two_runs(
      "price $2\nprice $5 a copy\n  only fine\n",
      std::string(set_in_body) + "page 1-4\n  words in body\n"
                                 "    says \"[x](fact:price) for one of [x](fact:copies)\"\n"));
  CHECK(read.problem("unknown-fact") == nullptr);
  CHECK(first_words(read.edition()) == "$2 for one of 10");
  REQUIRE(read.edition().pieces.size() == 1);
  const Piece &fine_ones = *read.edition().pieces.front();
  CHECK(first_words(fine_ones.edition) == "$5 for one of 10");
  CHECK(fine_ones.matter_of == std::vector<std::uint32_t>{0, 1, 1, 1, 1});
  CHECK(fine_ones.matter_but_price == std::vector<std::uint32_t>{0, 0, 0, 0, 0});
}

TEST_CASE("a text that tells the price is another one in all its boxes") {
  const Read read = tests::read(two_runs("price $2\nprice $5 a copy\n  only fine\n",
                                         std::string(set_in_body) +
                                             "text last\n  says \"It costs [x](fact:price).\"\n"
                                             "page 1-2\n  words of last in body\n"
                                             "page 3-4\n  patch\n    at 1in 1in, 1in x 1in\n"));
  REQUIRE(read.edition().pieces.size() == 1);
  const Edition &other = read.edition().pieces.front()->edition;
  CHECK(plain_text(read.edition().texts.front().prose) == "It costs $2.");
  CHECK(plain_text(other.texts.front().prose) == "It costs $5.");
  CHECK(read.edition().pieces.front()->matter_of == std::vector<std::uint32_t>{0, 1, 1, 0, 0});
}

TEST_CASE("words for a run that has a price need none of the others") {
  const auto of = [](std::string_view only) {
    return tests::read(two_runs("price $5 a copy\n  only fine\n",
                                std::string(set_in_body) + "page 1-4\n  words in body\n" +
                                    std::string(only) + "    says \"[x](fact:price)\"\n"));
  };
  CHECK(of("    only fine\n").problem("unknown-fact") == nullptr);
  const Read all = of("");
  REQUIRE(all.problem("unknown-fact"));
  CHECK(all.problem("unknown-fact")->message ==
        "the copies plain have no price, and this is in them");
}

TEST_CASE("facts in the words of an insert are those of the whole edition") {
  const Read read = tests::read(small_edition(
      "number 3\nmaker \"Tin Roof\"\nprice $2 a copy\n",
      std::string(set_in_body) + std::string(pages) +
          "insert card \"A card\"\n  size 4in x 3in\n  folding flat\n  page 1\n    words in body\n"
          "      says \"[x](fact:title) [x](fact:number) by [x](fact:maker): [x](fact:price), "
          "[x](fact:pages) pages, [x](fact:copies)\"\n"));
  CHECK(read.problem("unknown-fact") == nullptr);
  CHECK(first_words(read.edition().pieces.front()->edition) ==
        "Test 3 by Tin Roof: $2, 4 pages, 10");
}

TEST_CASE("a price on an insert that copies of two prices have asks for two inserts") {
  const Read read = tests::read(
      two_runs("price $2\nprice $5 a copy\n  only fine\n",
               std::string(set_in_body) + std::string(pages) +
                   "insert card \"A card\"\n  size 4in x 3in\n  folding flat\n  page 1\n"
                   "    words in body\n      says \"[x](fact:price)\"\n"));
  REQUIRE(read.problem("only-in-a-piece"));
  CHECK(read.problem("only-in-a-piece")->message ==
        "card tells a price, which is not the same in all copies that have it");
  REQUIRE(read.problem("only-in-a-piece")->type.size() == 2);
  CHECK(read.problem("only-in-a-piece")->type[0].line ==
        "insert card \"A card\"\n  only       plain");
  CHECK(read.problem("only-in-a-piece")->type[1].line ==
        "insert card-fine \"A card\"\n  only       fine");
}

TEST_CASE("what is glued on an original for one run stands on that run's page alone") {
  const Read read = tests::read(two_runs("", "page 1\n"
                                             "  patch\n    at 1in 1in, 1in x 1in\n"
                                             "  paste-up \"a ticket\"\n"
                                             "    only fine\n    at 1in 3in, 1in x 1in\n"
                                             "page 2-4\n  patch\n    at 1in 1in, 1in x 1in\n"));
  REQUIRE(read.edition().pieces.size() == 1);
  CHECK(read.edition().pages[1].elements.size() == 1);
  CHECK(read.edition().pieces.front()->edition.pages[1].elements.size() == 2);
  CHECK(read.edition().pieces.front()->matter_of == std::vector<std::uint32_t>{0, 1, 0, 0, 0});
}

} // namespace bodkin::tests
