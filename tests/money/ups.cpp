#include "money/ups.hpp"
#include "edition/piece.hpp"
#include "money/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// Ten copies, black at $0.10 a side and letter paper at $0.02 a sheet; a card of one printed side.
std::string with_card(std::string_view size, std::string_view up, std::string_view more = "") {
  return small_edition("pages 4", fmt::format("page 1-4\n  blank\n"
                                              "face typed from \"Courier Prime\"\n"
                                              "style label\n  face typed 9/11\n"
                                              "insert card\n  size {}\n  {}\n"
                                              "  page 1\n    words \"x\" in label\n"
                                              "  page 2\n    blank\n{}",
                                              size, up, more));
}

std::string told(const std::string &manuscript) {
  const Priced it = priced(manuscript);
  Problems problems;
  // Of the book's four pages and the card's two, the card's first is printed.
  check_ups(it.edition(), {false, false, false, false, false, true, false}, it.sources(), problems);
  return as_text(problems, it.sources(), false);
}

} // namespace

TEST_CASE("a number that is cheaper is said with what the run then costs") {
  // Book: ten blank sheets, $0.20. Cards: ten sides and sheets for each number cut out of one,
  // $1.20 over it; rows of 8 1/2in take three of 2 1/2in, of 11in three of 3 1/2in. Six and eight
  // take two sheets, as nine do; one alone is no letter sheet.
  CHECK(
      told(with_card("2.5in x 3.5in", "up 2")) ==
      R"(almanac.bodkin:26:6: note: 9 of card go on a sheet, where 2 are laid: $0.36 less for the run [cheaper-up]
  up 2
     ~
  why   in 3 rows of 3, cut apart after printing; the run costs $0.44 then, and $0.80 as it is laid
  type  up 9
)");
}

TEST_CASE("what the note says is what the estimate says before and after") {
  const auto run = [](std::string_view up) {
    return priced(with_card("2.5in x 3.5in", up)).estimate.run_total;
  };
  CHECK(run("up 2") == Exact::ratio(80, 100));
  CHECK(run("up 9") == Exact::ratio(44, 100));
}

TEST_CASE("of an insert whose size is missing nothing is said") {
  std::string manuscript = with_card("2.5in x 3.5in", "up most");
  manuscript.erase(manuscript.find("  size 2.5in x 3.5in\n"), 21);
  const Read it = read(manuscript);
  REQUIRE(any_errors(it.problems));
  Edition edition = it.edition();
  Problems problems;
  choose_ups(edition, *it.sources);
  check_ups(edition, {false, false, false, false, false, true, false}, *it.sources, problems);
  CHECK(problems.empty());
}

TEST_CASE("cards that fill the sheet are said to lie where the machine leaves it bare") {
  CHECK(told(with_card("quarter-letter", "up 1"))
            .find("type  up 4      (if nothing on it comes nearer than 1/4in to its edges)") !=
        std::string::npos);
}

TEST_CASE("the cheapest number, or the only one, is left in peace") {
  CHECK(told(with_card("2.5in x 3.5in", "up 9")) == "");
  CHECK(told(with_card("8in x 10in", "goes loose")) == "");
}

TEST_CASE("`up most` takes the cheapest number and says so") {
  Priced it = priced(with_card("quarter-letter", "up most"));
  Edition edition = it.edition();
  Problems problems;
  choose_ups(edition, it.sources());
  check_ups(edition, it.draws, it.sources(), problems);
  CHECK(*edition.pieces.front()->up == 4);
  CHECK(as_text(problems, it.sources(), false)
            .find("4 of card are laid on a sheet, in 2 rows of 2 "
                  "[up-chosen]") != std::string::npos);
}

TEST_CASE("an edition over its budget is priced anew with what its inserts hold") {
  // Pieces are laid again without their matter for every saving that is tried.
  const std::string text =
      priced(small_edition("pages 4\nbudget $0.01 a copy",
                           "page 1-4\n  blank\nface typed from \"Courier Prime\"\n"
                           "style label\n  face typed 9/11\ninsert card\n  size 2in x 3in\n"
                           "  page 1\n    words \"x\" in label\n"
                           "    hand stamp \"star\"\n      costs $1 once\n"))
          .over_budget_text();
  CHECK(text.find("[over-budget]") != std::string::npos);
}

namespace {

std::string told_of_book(const std::string &more, std::string_view facts = "pages 8") {
  const Priced it = priced(small_edition(
      facts, more + "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n"
                    "page 1-8\n  words \"x\" in label\n"));
  Problems problems;
  check_ups(it.edition(), it.draws, it.sources(), problems);
  return as_text(problems, it.sources(), false);
}

constexpr std::string_view large =
    "stock large\n  weight 20 lb bond\n  sheet tabloid, grain short\n"
    "  costs $0.03 a sheet\n";

} // namespace

// Forty sides and twenty sheets at $0.02 are $4.40; half the sides and ten sheets at $0.03 $2.30.
TEST_CASE("the same paper in larger sheets is said where the whole book costs less on it") {
  CHECK(
      told_of_book(std::string(large)) ==
      R"(almanac.bodkin:4:9: note: 2 of the book go on a tabloid sheet of large, where 1 is laid: $2.10 less for the run [cheaper-up]
  paper plain
        ~~~~~
  why   in 2 rows of 1, cut apart after printing; the run costs $2.30 then, and $4.40 as it is laid
  type  up         2
        paper large      (`up` new under `edition`)
)");
}

TEST_CASE("paper of another colour is not the same paper") {
  CHECK(told_of_book(std::string(large) + "  tint #f3b3c0\n") == "");
}

TEST_CASE("`up most` lays the book as often as costs least") {
  std::string manuscript = small_edition("up most\npages 4", "page 1-4\n  blank\n");
  manuscript.replace(manuscript.find("half-letter"), 11, "quarter-letter");
  Priced it = priced(manuscript);
  Edition edition = it.edition();
  Problems problems;
  choose_ups(edition, it.sources());
  check_ups(edition, it.draws, it.sources(), problems);
  CHECK(*edition.up == 2);
  CHECK(as_text(problems, it.sources(), false)
            .find("2 of the book are laid on a sheet, in 2 rows of 1 [up-chosen]") !=
        std::string::npos);
}

} // namespace bodkin::tests
