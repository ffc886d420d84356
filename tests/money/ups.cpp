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

TEST_CASE("a number that is cheaper is said with what each number would cost") {
  // Book: ten blank sheets, $0.20. Cards: ten sides and sheets for each number cut out of one,
  // $1.20 over it; rows of 8 1/2in take three of 2 1/2in, of 11in three of 3 1/2in.
  CHECK(
      told(with_card("2.5in x 3.5in", "up 2")) ==
      R"(almanac.bodkin:26:6: note: 9 of card go on a sheet, where 2 are laid: $0.36 less for the run [cheaper-up]
  up 2
     ~
  why   in 3 rows of 3, cut apart after printing; the run costs 1 up $1.40, 2 up $0.80, 3 up $0.68,
        4 up $0.56, 6 up $0.44, 8 up $0.44 and 9 up $0.44
  type  up         9
)");
}

TEST_CASE("cards that fill the sheet are said to lie where the machine leaves it bare") {
  CHECK(
      told(with_card("quarter-letter", "up 1"))
          .find(
              "type  up         4      (if nothing on it comes nearer than 1/4in to its edges)") !=
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
  choose_ups(edition, it.sources(), problems);
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

} // namespace bodkin::tests
