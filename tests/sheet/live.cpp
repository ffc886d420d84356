#include "sheet/live.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using test::Desk;

namespace {

constexpr Length quarter = Length::inches(1, 4), eighth = Length::inches(1, 8);

FinishStep trim(Length fore_edge, Length head = {}, Length foot = {}) {
  FinishStep step;
  step.kind = StepKind::trim;
  step.fore_edge = fore_edge;
  step.head = head;
  step.foot = foot;
  return step;
}

} // namespace

TEST_CASE("the fold side of a page asks nothing, the sheet's edges ask the bare edge") {
  Desk desk(8);
  const Imposition imposition = desk.impose();
  CHECK(live_area(desk.edition, imposition, 1).asks() == Edges{{}, quarter, quarter, quarter});
  CHECK(live_area(desk.edition, imposition, 2).asks() == Edges{quarter, quarter, {}, quarter});
  CHECK(live_area(desk.edition, imposition, 1).box(*desk.edition.size) ==
        Box{{}, quarter, Length::inches(21, 4), Length::inches(8)});
}

TEST_CASE("matter moved towards the fold needs less room at the fore-edge") {
  Desk desk(8);
  const Imposition imposition = desk.impose();
  const LiveArea three = live_area(desk.edition, imposition, 3);
  CHECK(three[PageEdge::right].bare == quarter);
  CHECK(three[PageEdge::right].shift == Length::inches(6, 1000));
  CHECK(three[PageEdge::right].asks() == quarter - Length::inches(6, 1000));
  CHECK(three[PageEdge::top].asks() == quarter);
}

TEST_CASE("the knife asks its trim, and the drift besides on a back") {
  Desk desk(8);
  desk.edition.finish = {trim(Length::inches(3, 8), eighth, Length::inches(1, 2))};
  const Imposition imposition = desk.impose();
  const LiveArea front = live_area(desk.edition, imposition, 1);
  CHECK(front.asks() == Edges{{}, quarter, Length::inches(3, 8), Length::inches(1, 2)});
  const LiveArea back = live_area(desk.edition, imposition, 2);
  CHECK(back[PageEdge::left].drift == Length::inches(1, 16));
  CHECK(back.asks() == Edges{Length::inches(7, 16), quarter, {}, Length::inches(9, 16)});
}

TEST_CASE("creep that is not made up for is lost to the knife") {
  Desk desk(8);
  desk.edition.finish = {trim(Length::inches(3, 8))};
  desk.edition.creep_made_up_for = false;
  const Imposition imposition = desk.impose();
  CHECK(imposition.place_of(3).creep == Length::inches(6, 1000));
  CHECK(imposition.place_of(3).shift == Length());
  CHECK(live_area(desk.edition, imposition, 3)[PageEdge::right].asks() ==
        Length::inches(3, 8) + Length::inches(6, 1000));
  CHECK(live_area(desk.edition, imposition, 1)[PageEdge::right].asks() == Length::inches(3, 8));
}

TEST_CASE("a measured creep may be left as it falls, too") {
  Desk desk(16);
  desk.edition.creep = Known<Length>{Length::inches(9, 100), {}};
  desk.edition.creep_made_up_for = false;
  const Imposition imposition = desk.impose();
  CHECK(imposition.place_of(8).creep == Length::inches(9, 100));
  CHECK(imposition.place_of(8).shift == Length());
}

TEST_CASE("slack of a smaller page counts towards the bare edge") {
  Desk desk(4);
  desk.edition.size.value = {Length::inches(43, 8), Length::inches(17, 2)};
  const Imposition imposition = desk.impose();
  const LiveArea one = live_area(desk.edition, imposition, 1);
  CHECK(one[PageEdge::right].slack == eighth);
  CHECK(one[PageEdge::right].asks() == eighth);
}

TEST_CASE("an uncut fold asks nothing, a fold that the knife opens asks the trim") {
  Desk desk(8, "section-8");
  const Imposition imposition = desk.impose();
  CHECK(live_area(desk.edition, imposition, 1).asks() == Edges{{}, {}, quarter, quarter});
  // Page 4 stands on the second pair of leaves, pushed out and made up for by one caliper.
  CHECK(live_area(desk.edition, imposition, 4).asks() ==
        Edges{quarter - Length::inches(6, 1000), {}, {}, quarter});
  desk.edition.finish = {trim({}, eighth)};
  CHECK(live_area(desk.edition, imposition, 1).asks() == Edges{{}, eighth, quarter, quarter});
}

TEST_CASE("a wider lead strip counts at both short edges of the sheet") {
  Desk desk(4);
  desk.edition.machines[0].lead = Known<Length>{Length::inches(1, 2), {}};
  const Imposition imposition = desk.impose();
  CHECK(live_area(desk.edition, imposition, 1).asks() ==
        Edges{{}, quarter, Length::inches(1, 2), quarter});
}

TEST_CASE("on pages that lie sideways the edges still are the page's own") {
  Desk desk(4);
  Folding sideways;
  sideways.across = false;
  sideways.rows = 2;
  sideways.steps = {{Part::top, false, {}}};
  desk.fold_as(sideways);
  desk.edition.machines[0].lead = Known<Length>{Length::inches(1, 2), {}};
  const Imposition imposition = desk.impose();
  CHECK(desk.problems.empty());
  CHECK(imposition.place_of(1).turn == 90);
  CHECK(live_area(desk.edition, imposition, 1).asks() ==
        Edges{{}, quarter, Length::inches(1, 2), quarter});
  CHECK(live_area(desk.edition, imposition, 2).asks() ==
        Edges{Length::inches(1, 2), quarter, {}, quarter});
}

TEST_CASE("a page may be filled only where the knife takes all that stays bare") {
  Desk desk(4);
  const Imposition imposition = desk.impose();
  CHECK_FALSE(live_area(desk.edition, imposition, 1).may_fill_page());
  desk.edition.finish = {trim(quarter, quarter, eighth)};
  CHECK_FALSE(live_area(desk.edition, imposition, 1).may_fill_page());
  desk.edition.finish = {trim(quarter, quarter, eighth), trim({}, {}, eighth)};
  CHECK(live_area(desk.edition, imposition, 1).may_fill_page());
  CHECK(trims_of(desk.edition).foot == quarter);
}

TEST_CASE("paper held in the binding is asked for on both sides of a leaf") {
  Desk desk(4, "stab-sewn");
  const Imposition imposition = desk.impose();
  const Length held = Length::inches(3, 8);
  CHECK(live_area(desk.edition, imposition, 1).asks() == Edges{held, quarter, quarter, quarter});
  CHECK(live_area(desk.edition, imposition, 2).asks() == Edges{quarter, quarter, held, quarter});
  CHECK(live_area(desk.edition, imposition, 1)[PageEdge::left].hidden == held);
}

TEST_CASE("a leaf stapled beside its spine still has the sheet's bare edge there") {
  Desk desk(4, "side-stapled");
  const Imposition imposition = desk.impose();
  CHECK(live_area(desk.edition, imposition, 1).asks() == Edges{quarter, quarter, quarter, quarter});
  CHECK(live_area(desk.edition, imposition, 1)[PageEdge::right].fore_edge);
  CHECK(live_area(desk.edition, imposition, 2)[PageEdge::left].fore_edge);
}

TEST_CASE("at a slit and at the folds of a folder nothing is asked") {
  Desk desk(8, "eight-page-mini");
  const Imposition imposition = desk.impose();
  // Page 7 lies in the lower row's middle: its foot is the sheet's edge, its head the slit.
  CHECK(live_area(desk.edition, imposition, 7).asks() == Edges{{}, {}, {}, quarter});
  Desk letter(6, "letter-fold");
  CHECK(live_area(letter.edition, letter.impose(), 6).asks() == Edges{{}, quarter, {}, quarter});
}

TEST_CASE("under a tab a page of an accordion's back is hidden, and its tab covers the bare edge") {
  Desk desk(16, "accordion");
  const Imposition imposition = desk.impose();
  // Page 12 lies behind page 5, the first of sheet 2, which is glued on sheet 1's tab of 1/2in.
  CHECK(live_area(desk.edition, imposition, 12).asks() ==
        Edges{{}, quarter, Length::inches(1, 2), quarter});
  // Page 4 ends where the tab begins, more than the bare edge from the sheet's edge.
  CHECK(live_area(desk.edition, imposition, 4).asks() == Edges{{}, quarter, {}, quarter});
  CHECK(live_area(desk.edition, imposition, 5).asks() == Edges{quarter, quarter, {}, quarter});
}
