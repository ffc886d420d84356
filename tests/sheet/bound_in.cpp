// Wraps and fold-outs in one pile with the book.
#include "sheet/bound_in.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

struct Made {
  tests::Read manuscript;
  Problems problems;
  std::vector<CopyPart> parts;
  explicit Made(const std::string &rest)
      : manuscript(read(
            small_edition("", "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\n"
                              "stock board\n  weight 65 lb cover\n  caliper 0.010in\n"
                              "  sheet letter, grain short\n  costs included\n"
                              "stock long\n  weight 20 lb bond\n  caliper 0.0038in\n  sheet legal\n"
                              "  costs included\npage 1-8\n  words \"x\" in body\n" +
                                  rest))) {
    parts = impose_parts(manuscript.edition(), *manuscript.sources, problems);
  }
};

std::string fold_out(const std::string &widths) {
  return "folding fold-out\n  sheet legal, across\n  sheets 1\n  panels 3 by 1\n  widths " +
         widths + "\n  fold right over left, " + widths.substr(8) +
         " panels\n  fold left over right, 22 panels\n"
         "insert rows\n  size half-letter\n  folding fold-out\n  paper long\n  goes centre\n"
         "  page 1\n    blank\n";
}

} // namespace

// (0.010 + 0.010) / 2 for the inner of two wraps of one card.
TEST_CASE("the second wrap lies round the first and pushes it out") {
  const Made made("wrap on board\n  page all\n    blank\nwrap on board\n  page all\n    blank\n");
  REQUIRE(made.parts.size() == 3);
  CHECK(made.parts[1].piece->name == "inner-wrap");
  CHECK(made.parts[2].piece->name == "outer-wrap");
  CHECK(made.parts[1].imposition.sheets.front().creep == Length::inches(1, 100));
  CHECK(made.parts[2].imposition.sheets.front().creep == Length{});
  // The book's outermost sheet of 0.0038in: 0.010 + (0.010 + 0.0038) / 2.
  CHECK(made.parts[0].imposition.sheets.front().creep == Length::inches(169, 10000));
}

TEST_CASE("a fold that reaches past the cut is told, one short of it is not") {
  const auto told = [](const std::string &widths) {
    const Made made(fold_out(widths) + "finish\n  fold all\n  trim fore-edge 1/4in\n");
    std::string text;
    for (const Problem &problem : made.problems)
      if (problem.check == "knife-through-fold")
        text += problem.message + "; " + problem.why;
    return text;
  };
  CHECK(told("22, 20, 14") == "");
  // Two sheets of 0.0038in round it: 0.0038 + 0.0038.
  CHECK(told("22, 21, 13") ==
        "the knife would cut rows apart at its fold; its fold lies 5 1/4in from the spine and is "
        "pushed out 0.008in more by the sheets round it; the copy is cut 5 1/4in from the spine");
}
