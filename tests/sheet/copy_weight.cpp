// What a copy weighs and how thick it is. The sums were made by GNU units 2.22, each beside its
// check: `units 'FORMULA' g`.
#include "sheet/copy_weight.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

std::string book(const std::string &facts, const std::string &rest) {
  return "edition \"Test\"\n  size half-letter\n  run 10 copies\n  paper plain\n  machine "
         "copier\n" +
         facts +
         "stock plain\n  weight 90 gsm\n  caliper 0.005in\n  sheet letter\n  costs included\n"
         "stock board\n  weight 200 gsm\n  caliper 0.010in\n  sheet letter\n  costs included\n"
         "machine copier\n  prints black at $0.10 a side\n"
         "page 1-16\n  blank\n" +
         rest;
}

struct Weighed {
  tests::Read made;
  Problems problems;
  std::vector<CopyPart> parts;
  CopyWeight copy;
  explicit Weighed(const std::string &manuscript) : made(read(manuscript)) {
    parts = impose_parts(made.edition(), *made.sources, problems);
    copy = weigh(parts);
  }
  double grams(std::size_t part) const { return copy.parts[part].mass->grams(); }
};

} // namespace

TEST_CASE("an uncut book weighs what its sheets weigh") {
  const Weighed found(book("", ""));
  // units '4 * 8.5 inch * 11 inch * 90 g/m^2' g
  CHECK(found.copy.mass->grams() == doctest::Approx(21.716086).epsilon(1e-6));
  CHECK(found.copy.thickness == Length::inches(5, 1000) * 8); // eight leaves
}

TEST_CASE("after the knife the inner leaves are narrower by their creep, and weigh less") {
  const Weighed found(book("", "finish\n  fold all\n  trim fore-edge 1/8in, head 1/4in\n"));
  // Sheets push out 0, 0.005, 0.010 and 0.015in; of each two leaves are 5.375in less that, 8.25in
  // high: units '2 * 8.25 inch * (4*5.375 - 0.030) inch * 90 g/m^2' g
  CHECK(found.copy.mass->grams() == doctest::Approx(20.569604).epsilon(1e-6));
}

TEST_CASE("each piece is weighed by itself, a quarter of a sheet as a quarter") {
  const Weighed found(book("", "wrap on board\n  page all\n    blank\n"
                               "insert slip\n  size quarter-letter\n  paper board\n  up 4\n"
                               "  count 3\n  page 1\n    hand sticker \"moon\"\n      mass 2 g\n"));
  REQUIRE(found.copy.parts.size() == 3);
  // units '8.5 inch * 11 inch * 200 g/m^2' g, and a quarter of it
  CHECK(found.grams(1) == doctest::Approx(12.064492).epsilon(1e-6));
  CHECK(found.grams(2) == doctest::Approx(3.016123).epsilon(1e-6));
  CHECK(found.copy.by_hand.grams() == doctest::Approx(6));
  CHECK(found.copy.mass->grams() ==
        doctest::Approx(found.grams(0) + found.grams(1) + 3 * found.grams(2) + 6).epsilon(1e-6));
  CHECK(found.copy.parts[1].thickness == Length::inches(20, 1000));
  CHECK(found.copy.thickness == Length::inches(40 + 20 + 30, 1000));
}

TEST_CASE("a copy with a paper of no known weight has none, but its thickness is known") {
  const Weighed found(book("", "stock odd\n  caliper 0.02in\n  sheet letter\n  costs included\n"
                               "insert slip\n  size half-letter\n  up 2\n  paper odd\n"
                               "  page 1\n    blank\n"));
  CHECK_FALSE(found.copy.mass.has_value());
  CHECK(found.copy.thickness == Length::inches(60, 1000));
}

TEST_CASE("grams are told to a tenth, whole ones without it") {
  CHECK(in_grams({3'000'000}) == "3 g");
  CHECK(in_grams({12'340'000}) == "12.3 g");
}

// The knife takes a quarter of the panel at the left, whose edge lies at the fore-edge with the
// book's; the fold at the right lies short of the cut, and the panel folded in ends far from it.
TEST_CASE("a fold-out bound in loses what reaches past the knife, and its free panel nothing") {
  const Weighed found(
      book("", "stock long\n  weight 90 gsm\n  caliper 0.005in\n  sheet legal\n  costs included\n"
               "folding fold-out\n  sheet legal, across\n  sheets 1\n  panels 3 by 1\n"
               "  widths 22, 20, 14\n  fold right over left, 14 panels\n"
               "  fold left over right, 22 panels\n"
               "insert rows\n  size half-letter\n  folding fold-out\n  paper long\n  goes centre\n"
               "  page 1\n    blank\nfinish\n  fold all\n  trim fore-edge 1/4in, foot 1/8in\n"));
  // Four sheets of 0.005in round it push it out 0.020in: of 5.5in stay 5.25 - 0.020, of the others
  // 5in and 3.5in: units '8.375 inch * (5.23 + 5 + 3.5) inch * 90 g/m^2' g
  CHECK(found.grams(1) == doctest::Approx(6.6767528).epsilon(1e-6));
}
