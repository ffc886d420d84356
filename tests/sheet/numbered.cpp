// Sheets that show the numbers of copies. The order of several up is derived: each place of the
// sheet has a stretch of the numbers, so that piles laid on one another run through (common
// practice, no source).
#include "sheet/numbered.hpp"

#include "sheet/parts.hpp"
#include "sheet/passes.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin::tests {
namespace {

std::string with_card(std::string_view facts, std::string_view card) {
  return small_edition(facts, "face book from \"EB Garamond\"\n"
                              "style body\n"
                              "  face book 10/12\n"
                              "page 1-4\n"
                              "  patch\n"
                              "    at 1in 1in, 1in x 1in\n"
                              "insert card\n"
                              "  size quarter-letter\n"
                              "  folding flat\n" +
                                  std::string(card) +
                                  "  page 1\n"
                                  "    words in body\n"
                                  "      says \"[1](fact:copy)\"\n"
                                  "  page 2\n"
                                  "    words in body\n"
                                  "      says \"Number [1](fact:copy)\"\n");
}

struct Laid {
  Read read;
  std::vector<CopyPart> parts;
  Imposition imposition;
  const Sheet &card() const { return imposition.sheets.back(); }
  std::string on(int side, std::int64_t nth) const {
    return fmt::format("{}", fmt::join(copies_on(read.edition(), card(), side, nth), " "));
  }
};

Laid laid(const std::string &manuscript) {
  Laid of{tests::read(manuscript), {}, {}};
  Problems problems;
  of.parts = impose_parts(of.read.edition(), *of.read.sources, problems);
  of.imposition = joined(of.parts);
  return of;
}

} // namespace

TEST_CASE("of four up each place has a stretch of the numbers, spares last") {
  const Laid of = laid(with_card("", "  up 4\n"));
  CHECK(is_numbered(of.card()));
  CHECK_FALSE(is_numbered(of.imposition.sheets.front()));
  CHECK(sheets_needed(of.read.edition(), of.card()).all == 3);
  CHECK(of.on(0, 0) == "0 3 6 9");
  CHECK(of.on(0, 1) == "1 4 7 -1");
  CHECK(of.on(0, 2) == "2 5 8 -1");
}

TEST_CASE("the back of a card has the number of its front") {
  const Laid of = laid(with_card("", "  up 4\n"));
  // Turned like a leaf, what lies left on the front lies right on the back.
  CHECK(of.on(1, 0) == "3 0 9 6");
}

TEST_CASE("two cards in each copy have its number both") {
  const Laid of = laid(with_card("", "  up 4\n  count 2\n"));
  CHECK(sheets_needed(of.read.edition(), of.card()).all == 5);
  CHECK(of.on(0, 0) == "0 2 5 7");
  CHECK(of.on(0, 1) == "0 3 5 8");
}

TEST_CASE("a sheet that is not one of the run's has no number") {
  const Laid of = laid(with_card("", "  up 4\n"));
  CHECK(of.on(0, without_number) == "-1 -1 -1 -1");
}

TEST_CASE("numbered sheets are a pass of their own, with pages for each of them") {
  const Laid of = laid(with_card("", "  up 4\n"));
  std::vector<PageInk> inks(of.imposition.where.size(), {true, Mode::black});
  Problems problems;
  const auto modes = modes_of(of.imposition, inks);
  const std::vector<Pass> passes =
      passes_of(of.read.edition(), of.imposition, modes, *of.read.sources, problems);
  REQUIRE(passes.size() == 2);
  CHECK(passes[0].file == "passes/01-plain.pdf");
  CHECK_FALSE(passes[0].numbered);
  CHECK(passes[1].file == "passes/02-plain-card-numbered.pdf");
  CHECK(passes[1].numbered);
  CHECK(passes[1].pages.size() == 6);
  CHECK(passes[1].pages[3].nth == 1);
  CHECK(passes[1].feeding.at(1) ==
        "Print all pages of the file once, in their order: each sheet has a number of its own, and "
        "the pile stays in the order that it comes out in.");
}

// Eight plain copies and two fine ones, whose sheets differ as `facts` say.
TEST_CASE("a sheet that is another one in some run is made for each run, the others for all") {
  std::string text =
      small_edition("cover on fine\n  only fine\npages 8\n", "stock fine\n"
                                                             "  weight 24 lb bond\n"
                                                             "  sheet letter, grain long\n"
                                                             "page 1-8\n"
                                                             "  patch\n"
                                                             "    at 1in 1in, 1in x 1in\n");
  text.replace(text.find("run 10 copies\n"), 14,
               "run 8 copies called plain\n  run 2 copies, 1 spare called fine\n");
  const Laid of = laid(text);
  REQUIRE(of.imposition.sheets.size() == 3);
  CHECK(of.imposition.sheets[0].only == RunSet(0));
  CHECK(of.imposition.sheets[1].only == RunSet());
  CHECK(of.imposition.sheets[2].only == RunSet(1));
  CHECK(of.imposition.sheets[2].in_place_of == 1);
  CHECK(of.imposition.sheets[2].number == 3);
  // Pages of the other book go on after the first's; those of sheets alike stand where these do.
  CHECK(of.imposition.place_of(9).page == 9);
  CHECK(of.imposition.place_of(11).page == 3);
  CHECK(sheets_needed(of.read.edition(), of.imposition.sheets[0]).all == 8);
  CHECK(sheets_needed(of.read.edition(), of.imposition.sheets[1]).all == 11);
  CHECK(sheets_needed(of.read.edition(), of.imposition.sheets[2]).all == 3);
  const std::vector<const CopyPart *> fine = parts_of_copy(of.parts, 1);
  REQUIRE(fine.size() == 1);
  CHECK(fine.front()->piece->name == "fine");
}

TEST_CASE(
    "a sheet that some of the runs have alike is made once for these, where the first has it") {
  std::string text =
      small_edition("cover on fine\n  only best\ncover on fine\n  only gift\npages 8\n",
                    "stock fine\n"
                    "  weight 24 lb bond\n"
                    "  sheet letter, grain long\n"
                    "page 1-8\n"
                    "  patch\n"
                    "    at 1in 1in, 1in x 1in\n");
  text.replace(text.find("run 10 copies\n"), 14,
               "run 8 copies called plain\n  run 2 copies, 1 spare called best\n"
               "  run 4 copies, 2 spare called poor\n  run 3 copies called gift\n");
  const Laid of = laid(text);
  REQUIRE(of.imposition.sheets.size() == 3);
  CHECK(of.imposition.sheets[0].only == RunSet(0).with(RunSet(2)));
  CHECK(of.imposition.sheets[1].only == RunSet());
  CHECK(of.imposition.sheets[2].only == RunSet(1).with(RunSet(3)));
  CHECK(sheets_needed(of.read.edition(), of.imposition.sheets[0]).all == 14);
  CHECK(sheets_needed(of.read.edition(), of.imposition.sheets[2]).all == 6);
  // Page 1 of each book: of poor where plain has it, of gift where best has it.
  CHECK(of.imposition.place_of(9).page == 9);
  CHECK(of.imposition.place_of(17).page == 1);
  CHECK(of.imposition.place_of(25).page == 9);
  CHECK(of.imposition.place_of(27).page == 3);
}

// Derived: the numbers of each run follow on those of the runs before it.
TEST_CASE("copies of two runs that are no neighbours have two stretches of numbers") {
  std::string text = small_edition("counts 11-27\n", "page 1-4\n  patch\n"
                                                     "    at 1in 1in, 1in x 1in\n");
  text.replace(text.find("run 10 copies\n"), 14,
               "run 8 copies called plain\n  run 2 copies, 1 spare called best\n"
               "  run 7 copies, 2 spare called gift\n");
  const Laid of = laid(text);
  const CopiesCounted copies = copies_of(of.read.edition(), RunSet(0).with(RunSet(2)));
  CHECK(copies.all() == 17);
  CHECK(numbers_of(of.read.edition(), copies) == "11 to 18 and 21 to 27");
  CHECK(copies.place(7) == 7);
  CHECK(copies.place(8) == 10);
  CHECK(copies.place(15) == spare_copy);
  CHECK(names_of(of.read.edition(), RunSet(0).with(RunSet(2))) == "plain and gift");
}

} // namespace bodkin::tests
