// The ticket for the counter: what each machine is asked and paid, and which sheets go on.
#include "paperwork/ticket.hpp"

#include "edition/reading.hpp"
#include "paperwork/pass_prices.hpp"
#include "paperwork/ticket_writer.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

// Not moved: its parts refer to one another. Every page draws; 1 and 4 in colour.
struct Printed {
  Read read;
  Problems problems;
  std::vector<CopyPart> parts;
  Imposition imposition;
  std::vector<SheetModes> modes;
  std::vector<Pass> passes;
  ChargedSides sides;
  Estimate money;

  Printed(std::string_view facts, std::string_view rest)
      : read(tests::read(small_edition(facts, rest))),
        parts(impose_parts(read.edition(), *read.sources, problems)), imposition(joined(parts)) {
    REQUIRE(read.found() == "");
    std::vector<PageInk> inks(imposition.where.size(), {true, Mode::black});
    inks[1].mode = inks[4].mode = Mode::colour;
    modes = modes_of(imposition, inks);
    passes = passes_of(read.edition(), imposition, modes, *read.sources, problems);
    sides = charged_sides(imposition, modes, passes);
    money = estimate(read.edition(), imposition, sides);
  }
  Making making() const {
    return {read.edition(), parts, imposition, modes, passes, sides, money, {}};
  }
};

const std::string at_home = "page 1, 4 by shop\n  blank\npage 2-3\n  blank\n"
                            "machine shop \"The shop at the station\"\n"
                            "  prints colour at $0.60 a side\n  bare 1/4in\n  tax 10%\n";

} // namespace

TEST_CASE("what is paid at a machine is told from what is paid at another of a longer name") {
  EstimateLine line;
  line.what = "tax at shop, plain alone";
  CHECK(is_paid_at(line, "shop"));
  line.what = "colour sides at shop-two on a3";
  CHECK(is_paid_at(line, "shop-two"));
  CHECK(!is_paid_at(line, "shop"));
  line.what = "board sheets";
  CHECK(!is_paid_at(line, "board"));
}

TEST_CASE("one machine has a ticket in one part") {
  const Printed printed("", "page 1-4\n  blank\n");
  const std::string told = as_text(job_ticket(printed.making()), 120);
  CAPTURE(told);
  CHECK(told.find("What goes where") == std::string::npos);
  CHECK(told.find("expected in all") != std::string::npos);
  CHECK(told.find("\n  passes/01-plain.pdf  1 + 9  plain  both") != std::string::npos);
}

// Derived: ten sides at $0.60 and a tenth of that; ten at $0.10.
TEST_CASE("a sheet whose sides go to two machines is told at both, with what is expected there") {
  const Printed printed("", at_home);
  const std::string told = as_text(job_ticket(printed.making()), 160);
  CAPTURE(told);
  for (const char *part :
       {"all together", "At the shop at the station\n", "At copier\n", "$6.60\n", "$1.00\n",
        "$7.60\n",
        "passes/01-plain-colour.pdf goes first, to the shop at the station; its sheets then go to "
        "copier, where passes/02-plain-black.pdf is printed on their backs.\n",
        "passes/01-plain-colour.pdf: Its sheets go on to copier, for passes/02-plain-black.pdf."})
    CHECK_MESSAGE(told.find(part) != std::string::npos, part);
}
