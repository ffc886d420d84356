#include "sheet/creep.hpp"

#include "sheet/paper.hpp"

#include <cmath>
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

TEST_CASE("a measured dummy gives the innermost creep, the other sheets are in proportion") {
  Desk desk(12);
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.on(5, test::rose);
  desk.edition.creep = Known<Length>{thousandths(26), {}};
  const Imposition imposition = desk.impose();
  CHECK(imposition.sheets[0].creep == thousandths(0));
  CHECK(imposition.sheets[1].creep == thousandths(16));
  CHECK(imposition.sheets[2].creep == thousandths(26));
  for (const int page : {5, 6, 7, 8})
    CHECK(imposition.place_of(page).shift == thousandths(26));
}

TEST_CASE("a measured creep of nothing moves nothing, and one sheet has none to measure") {
  Desk desk(12);
  desk.edition.creep = Known<Length>{Length{}, {}};
  CHECK(desk.impose().sheets[2].creep == Length{});
  Desk single(4);
  single.edition.creep = Known<Length>{thousandths(26), {}};
  CHECK(single.impose().sheets[0].creep == Length{});
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

namespace {

// How far the end of a leaf lies from the back of the book, the leaf running on its centre line
// from the fold's middle: half a turn of some radius, then straight. The arc is summed from short
// chords, nothing is known of pi.
double end_of_leaf(double length, double radius, double middle_of_arcs) {
  constexpr int steps = 20'000;
  double arc = 0, x = -radius, y = 0; // of a quarter turn, from the back of the fold
  for (int i = 1; i <= steps; ++i) {
    // Points of a circle by rational parameter: t from 0 to 1 is a quarter turn.
    const double t = static_cast<double>(i) / steps, square = 1 + t * t;
    const double to_x = -radius * (1 - t * t) / square, to_y = radius * 2 * t / square;
    arc += std::hypot(to_x - x, to_y - y);
    x = to_x;
    y = to_y;
  }
  return middle_of_arcs + (length - arc);
}

} // namespace

TEST_CASE("at a round fold, creep is what arcs laid in each other leave over") {
  // Sheets of mixed paper, each bent round the one inside it; the innermost round nothing.
  const std::vector<double> calipers{0.010, 0.006, 0.004, 0.006, 0.012}; // inches, outermost first
  std::vector<Length> exact;
  for (const double caliper : calipers)
    exact.push_back(Length::nearest_points(caliper * 72));
  const std::vector<Length> creep = creep_of(exact, true);
  double inside = 0; // thickness inside each sheet
  std::vector<double> ends(calipers.size());
  for (std::size_t i = calipers.size(); i-- > 0;) {
    ends[i] = end_of_leaf(5.5, inside + calipers[i] / 2, 1);
    inside += calipers[i];
  }
  for (std::size_t i = 0; i < calipers.size(); ++i) {
    CAPTURE(i);
    CHECK(creep[i].in_inches() == doctest::Approx(ends[i] - ends[0]).epsilon(1e-6));
  }
}

TEST_CASE("at a sharp fold, creep is how much further in the middle of a sheet lies") {
  const std::vector<double> calipers{0.010, 0.006, 0.004, 0.006, 0.012};
  std::vector<Length> exact;
  for (const double caliper : calipers)
    exact.push_back(Length::nearest_points(caliper * 72));
  const std::vector<Length> creep = creep_of(exact);
  double outside = 0;
  for (std::size_t i = 0; i < calipers.size(); ++i) {
    CHECK(creep[i].in_inches() ==
          doctest::Approx(outside + calipers[i] / 2 - calipers[0] / 2).epsilon(1e-9));
    outside += calipers[i];
  }
}

TEST_CASE("a folding that nests round creeps half of pi times as far") {
  Desk desk(16);
  desk.edition.folding.value.round = true;
  const Imposition imposition = desk.impose();
  // 3 x 0.006in x 1.570796: pi from memory.
  CHECK(imposition.sheets[3].creep.in_inches() == doctest::Approx(0.0282743).epsilon(1e-5));
}

TEST_CASE("minis, folders, French folds and leaves bound at the side have no creep") {
  for (const auto &[name, pages] : {std::pair{"eight-page-mini", 8},
                                    {"letter-fold", 6},
                                    {"double-gate", 8},
                                    {"french-fold", 4},
                                    {"accordion", 16},
                                    {"double-leaves", 40},
                                    {"stab-sewn", 40}}) {
    Desk desk(pages, name);
    const Imposition imposition = desk.impose();
    for (const Sheet &sheet : imposition.sheets)
      CHECK(sheet.creep == Length());
  }
}

TEST_CASE("each sewn section creeps by itself, each of two books likewise") {
  Desk sewn(64, "sewn-sections");
  const Imposition sections = sewn.impose();
  for (const Sheet &sheet : sections.sheets)
    CHECK(sheet.creep == thousandths(6) * ((sheet.number - 1) % 4));
  Desk two(24, "back-to-back");
  const Imposition books = two.impose();
  CHECK(books.sheets[2].creep == thousandths(12));
  CHECK(books.sheets[3].creep == thousandths(0));
}
