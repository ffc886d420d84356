#include "sheet/creep.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;

namespace {

Length thousandths(std::int64_t n) { return Length::inches(n, 1000); }

} // namespace

TEST_CASE("creep of one paper grows by its caliper, the outermost has none") {
  // (n - 1) t at a sharp fold: geometry.
  const std::vector<Length> creep = creep_of(std::vector<Length>(4, thousandths(6)));
  CHECK(creep == std::vector{thousandths(0), thousandths(6), thousandths(12), thousandths(18)});
}

TEST_CASE("creep of mixed papers sums the mean caliper of each two neighbours") {
  // 10, 6, 4: (10 + 6) / 2 = 8; 8 + (6 + 4) / 2 = 13.
  CHECK(creep_of({thousandths(10), thousandths(6), thousandths(4)}) ==
        std::vector{thousandths(0), thousandths(8), thousandths(13)});
  CHECK(creep_of({}).empty());
}

TEST_CASE("half units of creep are not lost on the way") {
  const std::vector<Length> odd{Length::units(1), Length::units(2), Length::units(1)};
  CHECK(creep_of(odd)[2] == Length::units(3));
}

TEST_CASE("each nested sheet has the creep of its own and its outer papers") {
  Desk desk(12);
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.on(5, test::rose);
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].creep == thousandths(0));
  CHECK(imposition.sheets[1].creep == thousandths(8));
  CHECK(imposition.sheets[2].creep == thousandths(13));
  for (const int page : {5, 6, 7, 8}) {
    CHECK(imposition.place_of(page).creep == thousandths(13));
    CHECK(imposition.place_of(page).shift == thousandths(13));
  }
}

TEST_CASE("inside a folded section each pair of leaves is pushed out by those around it") {
  Desk desk(16, "section-16");
  const Imposition imposition = desk.impose();
  for (const int page : {1, 2, 15, 16})
    CHECK(imposition.place_of(page).creep == thousandths(0));
  for (const int page : {3, 4, 13, 14})
    CHECK(imposition.place_of(page).creep == thousandths(6));
  for (const int page : {7, 8, 9, 10})
    CHECK(imposition.place_of(page).creep == thousandths(18));
  CHECK(imposition.sheets[0].creep == thousandths(18));
}

TEST_CASE("gathered sections do not push each other out") {
  Desk desk(32, "section-16");
  desk.on(20, test::rose);
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].creep == thousandths(18));
  CHECK(imposition.sheets[1].creep == thousandths(12));
}

TEST_CASE("whatever the papers, creep never falls towards the middle and sums by hand") {
  // Calipers picked by a fixed rule; sums counted pair by pair, from the middle of each sheet.
  const std::vector<StockId> papers{test::cream, test::rose, test::board};
  for (int pages = 4; pages <= 80; pages += 4)
    for (const std::size_t step : {1u, 2u, 5u, 7u}) {
      Desk desk(pages);
      for (int k = 0; k < pages / 4; ++k)
        desk.on(2 * k + 1, papers[static_cast<std::size_t>(k) * step % 3]);
      const Imposition imposition = desk.impose();
      Length outside; // calipers of the sheets outside this one
      const Length first = *desk.edition[imposition.sheets[0].stock].caliper;
      for (const Sheet &sheet : imposition.sheets) {
        const Length own = *desk.edition[sheet.stock].caliper;
        const Length from_middle = sheet.number == 1 ? Length() : outside - first / 2 + own / 2;
        CHECK(sheet.creep == from_middle);
        outside += own;
      }
    }
}
