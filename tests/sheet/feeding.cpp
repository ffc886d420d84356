// How a stack goes in and back in, in whole sentences.
#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;
using test::inks;

namespace {

std::string told(Desk &desk, const std::vector<PageInk> &ink) {
  const Imposition imposition = desk.impose();
  const std::vector<SheetModes> modes = modes_of(imposition, ink);
  std::string text;
  for (const Pass &pass : passes_of(desk.edition, imposition, modes, desk.sources, desk.problems)) {
    text += pass.file + "\n";
    for (const std::string &line : pass.feeding)
      text += "  " + line + "\n";
  }
  return text;
}

} // namespace

TEST_CASE("a machine that turns sheets says over which edge") {
  Desk desk(8);
  CHECK(told(desk, inks(8)) ==
        "passes/01-cream.pdf\n"
        "  Load unprinted cream for sheets 1 and 2.\n"
        "  Both sides are printed; corner-copier turns each sheet over its short edge.\n");
}

TEST_CASE(
    "by hand, the printed stack goes back in turned over, bare sheets lifted out or laid in") {
  Desk desk(12);
  desk.edition.machines[0].duplex.value = Duplex::by_hand;
  desk.edition.machines[0].flip.value = SheetEdge::long_edge;
  CHECK(told(desk, inks(12, {}, {4, 9, 5, 8})) ==
        "passes/01-cream-fronts.pdf\n"
        "  Load unprinted cream for sheets 1 and 2.\n"
        "passes/02-cream-backs.pdf\n"
        "  Put the sheets of passes/01-cream-fronts.pdf back in, in the same order, turned over "
        "their "
        "long edge: their backs are printed now.\n"
        "  Lift out sheet 2 first: it is not printed in this pass.\n"
        "  Lay in unprinted cream for sheet 3, at its place in the order: 1 and 3.\n");
}

TEST_CASE("black after colour goes in as it went in before") {
  Desk desk(8);
  desk.edition.machines[0].modes_apart.value = true;
  CHECK(told(desk, inks(8, {1, 2})) ==
        "passes/01-cream-colour.pdf\n"
        "  Load unprinted cream for sheet 1.\n"
        "  Both sides are printed; corner-copier turns each sheet over its short edge.\n"
        "passes/02-cream-black.pdf\n"
        "  Load unprinted cream for sheet 2.\n"
        "  Both sides are printed; corner-copier turns each sheet over its short edge.\n");
  CHECK(told(desk, inks(8, {1, 3})) == "passes/01-cream-colour.pdf\n"
                                       "  Load unprinted cream for sheets 1 and 2.\n"
                                       "passes/02-cream-black.pdf\n"
                                       "  Put the sheets of passes/01-cream-colour.pdf back in, in "
                                       "the same order, turned over their "
                                       "short edge: their backs are printed now.\n");
}

TEST_CASE("sheets that come from another machine are told with those that do not") {
  Desk desk(8);
  desk.edition.machines.push_back(desk.edition.machines[0]);
  desk.edition.machines[1].name = "shop";
  desk.edition.machines[0].duplex.value = Duplex::by_hand;
  for (const int page : {1, 8})
    desk.by(page, MachineId{1});
  CHECK(told(desk, inks(8, {1, 8})) ==
        "passes/01-cream-colour.pdf\n"
        "  Load unprinted cream for sheet 1.\n"
        "passes/02-cream-black-fronts.pdf\n"
        "  Load unprinted cream for sheet 2.\n"
        "passes/03-cream-black-backs.pdf\n"
        "  Put the sheets of passes/01-cream-colour.pdf, which come from shop, and of "
        "passes/02-cream-black-fronts.pdf on one pile, in the order 1 and 2, and that into the "
        "machine, turned over their short edge: their backs are printed now.\n");
}
