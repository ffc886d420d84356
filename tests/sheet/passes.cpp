#include "sheet/passes.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using test::Desk;
using test::inks;

namespace {

// "1f 1b 2f- 2b*": sheet and side of each PDF page, - where empty, * where turned half round.
std::string pages(const Pass &pass) {
  std::string text;
  for (const PassPage &page : pass.pages)
    text += fmt::format("{}{}{}{}{}", text.empty() ? "" : " ", page.sheet + 1,
                        page.side == SideName::front ? "f" : "b", page.prints ? "" : "-",
                        page.turned ? "*" : "");
  return text;
}

struct Job {
  Imposition imposition;
  std::vector<SheetModes> modes;
  std::vector<Pass> passes;
};
Job job(Desk &desk, const std::vector<PageInk> &ink) {
  Job result;
  result.imposition = desk.impose();
  result.modes = modes_of(result.imposition, ink);
  result.passes =
      passes_of(desk.edition, result.imposition, result.modes, desk.sources, desk.problems);
  return result;
}

std::string told(const Job &of) {
  std::string text;
  for (const Pass &pass : of.passes)
    text += fmt::format("{}: {}\n", pass.file, pages(pass));
  return text;
}

} // namespace

TEST_CASE("a colour page makes its whole side a colour side") {
  Desk desk(8);
  const Job one = job(desk, inks(8, {1}));
  CHECK(one.modes[0][0] == Mode::colour);
  CHECK(one.modes[0][1] == Mode::black);
  CHECK(one.modes[1][0] == Mode::black);
}

TEST_CASE("a side whose pages draw nothing is blank, whatever mode they would be") {
  Desk desk(8);
  const Job one = job(desk, inks(8, {1, 8}, {1, 8}));
  CHECK(one.modes[0][0] == std::nullopt);
}

TEST_CASE(
    "a machine that turns sheets prints each stock in one pass, from the outermost sheet in") {
  Desk desk(12);
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.on(3, test::rose);
  const Job one = job(desk, inks(12, {1, 12}));
  CHECK(told(one) == "passes/01-board.pdf: 1f 1b\npasses/02-rose.pdf: 2f 2b\n"
                     "passes/03-cream.pdf: 3f 3b\n");
  CHECK(one.passes[0].mode == Mode::colour);
  CHECK(one.passes[1].mode == Mode::black);
  CHECK(one.passes[1].sides == PassSides::both);
}

TEST_CASE("a pass with any front and any back has two pages a sheet, empty where nothing prints") {
  Desk desk(12);
  const Job one = job(desk, inks(12, {}, {2, 11, 3, 10, 5, 6, 7, 8}));
  CHECK(told(one) == "passes/01-cream.pdf: 1f 1b- 2f- 2b\n");
  CHECK(one.passes[0].sheets == std::vector{0, 1});
}

TEST_CASE("a pass of fronts only, or of backs only, has one page a sheet") {
  Desk desk(8);
  CHECK(told(job(desk, inks(8, {}, {2, 7, 4, 5}))) == "passes/01-cream.pdf: 1f 2f\n");
  CHECK(told(job(desk, inks(8, {}, {1, 8, 3, 6, 4, 5}))) == "passes/01-cream.pdf: 1b\n");
}

TEST_CASE("an edition that prints nothing has no pass") {
  Desk desk(4);
  CHECK(job(desk, inks(4, {}, {1, 2, 3, 4})).passes.empty());
}

TEST_CASE("by hand there are two files, the backs in the order of the fronts") {
  Desk desk(8);
  desk.edition.machines[0].duplex.value = Duplex::by_hand;
  const Job one = job(desk, inks(8, {4}));
  CHECK(told(one) == "passes/01-cream-fronts.pdf: 1f 2f\npasses/02-cream-backs.pdf: 1b 2b\n");
  CHECK(one.passes[0].mode == Mode::black);
  CHECK(one.passes[1].mode == Mode::colour);
}

TEST_CASE("with modes apart, colour sides are a pass of their own before the black ones") {
  Desk desk(12);
  desk.edition.machines[0].modes_apart.value = true;
  const Job one = job(desk, inks(12, {1, 4}));
  CHECK(told(one) == "passes/01-cream-colour.pdf: 1f 1b- 2f- 2b\n"
                     "passes/02-cream-black.pdf: 1f- 1b 2f 2b- 3f 3b\n");
}

TEST_CASE("modes apart by hand go colour before black, fronts before backs") {
  Desk desk(8);
  desk.edition.machines[0].modes_apart.value = true;
  desk.edition.machines[0].duplex.value = Duplex::by_hand;
  CHECK(told(job(desk, inks(8, {1, 2}))) ==
        "passes/01-cream-colour-fronts.pdf: 1f\npasses/02-cream-colour-backs.pdf: 1b\n"
        "passes/03-cream-black-fronts.pdf: 2f\npasses/04-cream-black-backs.pdf: 2b\n");
}

TEST_CASE("two machines on one stock are passes of their own") {
  Desk desk(4);
  Machine other = test::copier();
  other.name = "library-laser";
  desk.edition.machines.push_back(other);
  desk.by(1, MachineId{1});
  CHECK(told(job(desk, inks(4))) ==
        "passes/01-cream-fronts.pdf: 1f\npasses/02-cream-backs.pdf: 1b\n");
}

TEST_CASE("a machine that prints one side cannot print a sheet on both") {
  Desk desk(8, "saddle-stitch", "machine corner-copier\n  duplex none\n");
  desk.edition.machines[0].duplex = {Duplex::none, desk.words("  duplex", "none")};
  job(desk, inks(8, {}, {2, 7}));
  REQUIRE(desk.problems.size() == 1);
  const Problem &problem = desk.problems[0];
  CHECK(problem.check == "one-side-only");
  CHECK(problem.range == desk.words("  duplex", "none"));
  CHECK(problem.message == "corner-copier prints one side only, and sheet 2 is printed on both");
  CHECK(problem.why == "sheet 2 is one piece of paper: pages 6 and 3 on its front, 4 and 5 on its "
                       "back; with `duplex none` (line 2) paper goes through once");
  CHECK(problem.type[0].line == "duplex     by hand");
  desk.problems.clear();
  job(desk, inks(8, {}, {2, 7, 4, 5}));
  CHECK(desk.problems.empty());
}

namespace {

// Where a point of a PDF page ends up on the paper, as seen on its front, when the machine prints
// the front, turns the sheet over the edge that it turns it over, and prints the back.
Spot printed(const Sheet &sheet, const Machine &machine, const PassPage &page, Spot at) {
  if (page.turned)
    at = {sheet.size.width - at.x, sheet.size.height - at.y};
  if (page.side == SideName::front)
    return at;
  const bool long_edges_upright = sheet.size.height > sheet.size.width;
  const bool over_upright_edge =
      (*machine.flip == SheetEdge::long_edge) ? long_edges_upright : !long_edges_upright;
  return over_upright_edge ? Spot{sheet.size.width - at.x, at.y}
                           : Spot{at.x, sheet.size.height - at.y};
}

// Head and foot of the fold side of a page, on the side as sheets.pdf shows it.
std::array<Spot, 2> spine_of(const Place &place) {
  const Box &box = place.box;
  const bool left = place.left == Meets::spine;
  const std::array<Spot, 4> corners{Spot{box.x, box.y}, Spot{box.right(), box.y},
                                    Spot{box.right(), box.foot()}, Spot{box.x, box.foot()}};
  const auto quarter = static_cast<std::size_t>(place.turn / 90);
  const std::size_t head = left ? 0 : 1, foot = left ? 3 : 2;
  return {corners[(head + quarter) % 4], corners[(foot + quarter) % 4]};
}

} // namespace

TEST_CASE(
    "paper moved through the machine has every page behind its leaf's other page, head to head") {
  Folding sideways;
  sideways.name = "sideways";
  sideways.columns = 1;
  sideways.rows = 2;
  sideways.steps = {{Part::top, false, {}}};
  std::vector<Folding> foldings{sideways};
  for (const std::string_view name : {"saddle-stitch", "section-8", "section-16"})
    foldings.push_back(test::shelf_folding(name));
  for (const Folding &folding : foldings)
    for (const bool across : {true, false})
      for (const SheetEdge flip : {SheetEdge::long_edge, SheetEdge::short_edge})
        for (const Duplex duplex : {Duplex::by_machine, Duplex::by_hand}) {
          Desk desk(32);
          Folding lying = folding;
          lying.across = across;
          desk.fold_as(lying);
          desk.edition.machines[0].flip.value = flip;
          desk.edition.machines[0].duplex.value = duplex;
          const Job one = job(desk, inks(32));
          std::vector<std::array<Spot, 2>> spines(33);
          for (const Pass &pass : one.passes)
            for (const PassPage &page : pass.pages) {
              const Sheet &sheet = one.imposition.sheets[static_cast<std::size_t>(page.sheet)];
              for (const Place &place : sheet.sides[page.side == SideName::front ? 0 : 1].places) {
                std::array<Spot, 2> ends = spine_of(place);
                // The PDF page carries the side turned; printing it must bring it back.
                for (Spot &end : ends)
                  end = printed(sheet, desk.edition.machines[0], page, end);
                spines[static_cast<std::size_t>(place.page)] = ends;
              }
            }
          for (std::size_t recto = 1; recto <= 32; recto += 2)
            CHECK(spines[recto] == spines[recto + 1]);
        }
}

TEST_CASE("backs are turned only where the machine's flip is not the sheet's own") {
  Desk desk(4);
  CHECK(told(job(desk, inks(4))) == "passes/01-cream.pdf: 1f 1b\n");
  desk.edition.machines[0].flip.value = SheetEdge::long_edge;
  CHECK(told(job(desk, inks(4))) == "passes/01-cream.pdf: 1f 1b*\n");
}

TEST_CASE("a side is in exactly one pass when it draws, and in none when it does not") {
  for (int pages_in_all = 4; pages_in_all <= 40; pages_in_all += 4)
    for (const bool apart : {false, true})
      for (const Duplex duplex : {Duplex::by_machine, Duplex::by_hand}) {
        Desk desk(pages_in_all);
        desk.edition.machines[0].modes_apart.value = apart;
        desk.edition.machines[0].duplex.value = duplex;
        std::vector<PageInk> ink = inks(pages_in_all);
        for (std::size_t page = 1; page < ink.size(); ++page)
          ink[page] = {page * 7 % 5 > 1, page % 6 == 1 ? Mode::colour : Mode::black};
        const Job one = job(desk, ink);
        std::vector<std::array<int, 2>> printed_times(one.imposition.sheets.size());
        for (const Pass &pass : one.passes)
          for (const PassPage &page : pass.pages)
            if (page.prints)
              ++printed_times[static_cast<std::size_t>(page.sheet)]
                             [page.side == SideName::front ? 0 : 1];
        for (std::size_t i = 0; i < printed_times.size(); ++i)
          for (std::size_t side = 0; side < 2; ++side)
            CHECK(printed_times[i][side] == (one.modes[i][side] ? 1 : 0));
      }
}
