// The verifier itself: it must see what is wrong.
#include "sheet/paper.hpp"
#include "sheet/refold.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;
using test::refold;

TEST_CASE("the verifier sees two pages exchanged, a head turned and a back that lies elsewhere") {
  Desk desk(8);
  const Imposition good = desk.impose();
  const Folding &folding = *desk.edition.folding;
  REQUIRE(refold(good, folding) == "");

  Imposition exchanged = good;
  std::swap(exchanged.sheets[0].sides[0].places[1].page,
            exchanged.sheets[1].sides[0].places[1].page);
  std::swap(exchanged.where[1], exchanged.where[3]);
  CHECK(refold(exchanged, folding) == "no way of laying the sheets down folds them into the book");

  Imposition turned = good;
  turned.sheets[0].sides[0].places[1].turn = 180;
  CHECK(refold(turned, folding) == "sheet 1: page 2 is not head to head with 1");

  Imposition moved = good;
  moved.sheets[1].sides[1].places[0].box.x += Length::mm(3);
  CHECK(refold(moved, folding) == "sheet 2: nothing lies exactly behind page 3");

  Imposition lost = good;
  lost.where[5] = lost.where[6];
  CHECK(refold(lost, folding) == "page 5 is not where it is said to be");
}

TEST_CASE("foldings that no shelf has fold back into their books as well") {
  const auto own = [](int columns, int rows, std::vector<FoldStep> steps, Gather gather) {
    Folding folding;
    folding.name = "own";
    folding.columns = columns;
    folding.rows = rows;
    folding.steps = std::move(steps);
    folding.gather.value = gather;
    return folding;
  };
  const std::vector<Part> sideways{Part::left, Part::right}, upright{Part::top, Part::bottom};
  for (const Gather gather : {Gather::nested, Gather::one_after_another})
    for (const Part first : sideways)
      for (const Part second : upright)
        for (const int unders : {0, 1, 2, 3})
          for (const bool spine_across : {false, true}) {
            const FoldStep x{first, (unders & 1) != 0, {}}, y{second, (unders & 2) != 0, {}};
            Desk desk(24);
            desk.fold_as(own(2, 2, spine_across ? std::vector{x, y} : std::vector{y, x}, gather));
            const Imposition two = desk.impose();
            CHECK(two.pages_a_sheet == 8);
            desk.fold_as(own(4, 4, spine_across ? std::vector{x, y, x, y} : std::vector{y, x, y, x},
                             gather));
            const Imposition four = desk.impose();
            CHECK(four.pages_a_sheet == 32);
          }
}
