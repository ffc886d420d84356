#include "money/budget.hpp"
#include "money/manuscript.hpp"
#include "money/report.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// Eight pages on two sheets of plain paper for ten copies. Black costs $0.10 and colour $0.50 a
// side.
std::string eight_pages(std::string_view facts, std::string_view pages,
                        std::string_view more = "") {
  return small_edition(facts, fmt::format("{}\nface typed from \"Courier Prime\"\n\nstyle label\n"
                                          "  face typed 9/11\n\n{}",
                                          more, pages));
}

std::string page(std::string_view line) {
  return fmt::format("{}\n  words \"x\" in label\n", line);
}

// Pages 3 and 6 are the front of the inner sheet; page 1 is on the outer one's with page 8.
std::string three_colours() {
  return page("page 1 in colour   # the face of it") + page("page 2") + page("page 3 in colour") +
         page("page 6 in colour") + page("page 8");
}

} // namespace

TEST_CASE("an edition within its budget has no problem") {
  CHECK(priced(eight_pages("budget $9 a copy", three_colours())).over_budget_text() == "");
}

TEST_CASE("one side in black that brings it under is offered with the lines to type") {
  // 2 colour sides, 1 black side and 2 sheets at $0.02: $1.14.
  CHECK(priced(eight_pages("budget $0.80 a copy", three_colours())).over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.14, which is $0.34 over [over-budget]
  budget $0.80 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, 10 black sides $1.00, paper $0.40; tried: pages 3 and 6 in
        black, $0.74: in
  type  page 3
        page 6      ($0.74 a copy with these 2 lines)
        page 1      (or this: $0.74 a copy)
)");
}

TEST_CASE("sides in black are tried together where one alone is not enough") {
  CHECK(priced(eight_pages("budget $0.40 a copy", three_colours())).over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.14, which is $0.74 over [over-budget]
  budget $0.40 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, 10 black sides $1.00, paper $0.40; tried: pages 3 and 6 in
        black, $0.74; page 1 in black as well, $0.34: in
  type  page 1
        page 3
        page 6      ($0.34 a copy with these 3 lines)
)");
}

TEST_CASE("a colour that the edition gives by default is taken out where it is given") {
  CHECK(priced(eight_pages("budget $0.60 a copy\nprinting colour", page("page 1") + page("page 3")))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.02, which is $0.42 over [over-budget]
  budget $0.60 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, paper $0.20; tried: pages 1 and 3 in black, $0.22: in
  type  printing black      ($0.22 a copy)
)");
}

// Page 1 is coloured and 3 is not; page 8, beside 1, and 6, beside 3, ask for nothing.
TEST_CASE("a side that is paid as colour for nothing comes first and goes with all that follows") {
  Priced it = priced(eight_pages(
      "budget $0.40 a copy", page("page 1 in colour") + page("page 3 in colour") + page("page 8")));
  it.coloured = {false, true, false, false, false, false, false, false, false};
  CHECK(it.over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.04, which is $0.64 over [over-budget]
  budget $0.40 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, paper $0.40; tried: page 3 in black, where nothing is
        coloured, $0.64; page 1 in black as well, $0.24: in
  type  page 1
        page 3      ($0.24 a copy with these 2 lines)
)");
}

TEST_CASE("under a cover in colour the page that has none says black itself") {
  Priced it =
      priced(eight_pages("budget $0.65 a copy\ncover on plain in colour",
                         page("page 1") + page("page 2 called inside on plain") + page("page 7")));
  it.coloured = {false, true, false, false, false, false, false, false, false};
  CHECK(it.over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.04, which is $0.39 over [over-budget]
  budget $0.65 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, paper $0.40; tried: pages 2 and 7 in black, where nothing
        is coloured, $0.64: in
  type  page 2 called inside in black on plain
        page 7 in black      ($0.64 a copy with these 2 lines)
        cover on plain      (or this: $0.24 a copy)
)");
}

TEST_CASE("a wrap in colour is tried in black") {
  const std::string wrap = "wrap on plain in colour\n  page front-cover\n"
                           "    words \"x\" in label\n";
  CHECK(priced(eight_pages("budget $0.40 a copy", page("page 1") + wrap)).over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $0.64, which is $0.24 over [over-budget]
  budget $0.40 a copy
         ~~~~~~~~~~~~
  why   dearest: 10 colour sides $5.00, 10 black sides $1.00, paper $0.40; tried: the wrap in black,
        $0.24: in
  type  wrap on plain      ($0.24 a copy)
)");
}

TEST_CASE("another of the edition's own papers is tried in place of a dear one") {
  CHECK(priced(eight_pages("budget $0.55 a copy\ncover on card", page("page 1") + page("page 8"),
                           "stock card\n  weight 20 lb bond\n  sheet letter, grain long\n"
                           "  costs $50 per 100 sheets\n"))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $0.62, which is $0.07 over [over-budget]
  budget $0.55 a copy
         ~~~~~~~~~~~~
  why   dearest: paper $5.20, 10 black sides $1.00; tried: plain in place of card, $0.14: in
  type  cover on plain      ($0.14 a copy)
)");
}

TEST_CASE("a longer run is offered where it spreads what is paid once") {
  CHECK(priced(eight_pages("budget $0.50 a copy",
                           "page 1\n  words \"x\" in label\n  hand stamp \"moon\"\n"
                           "    at 1in 1in, 1in x 1in\n    costs $6.00 once\npage 8\n"))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $0.74, which is $0.24 over [over-budget]
  budget $0.50 a copy
         ~~~~~~~~~~~~
  why   dearest: stamp moon $6.00, 10 black sides $1.00, paper $0.40
  type  run 17 copies      ($0.49 a copy, $8.38 in all)
)");
}

TEST_CASE("a shorter run is offered for a budget of the run") {
  CHECK(
      priced(eight_pages("budget $1 a run", page("page 1") + page("page 8"))).over_budget_text() ==
      R"(almanac.bodkin:6:10: error: the run costs $1.40, which is $0.40 over [over-budget]
  budget $1 a run
         ~~~~~~~~
  why   dearest: 10 black sides $1.00, paper $0.40
  type  run 7 copies      ($0.14 a copy, $0.98 in all)
)");
}

TEST_CASE("a shorter run is not offered below what is sold and given away") {
  const auto told = [](std::string_view promised) {
    return priced(eight_pages(fmt::format("budget $1 a run\nprice $2 a copy\n{}", promised),
                              page("page 1") + page("page 8")))
        .over_budget_text();
  };
  CHECK(told("sells 5 copies \"here\"\ngives 2 copies").find("type  run 7 copies") !=
        std::string::npos);
  CHECK(told("sells 6 copies \"here\"\ngives 2 copies").find("type  run") == std::string::npos);
}

TEST_CASE("where nothing brings it under, the budget itself is the line to change") {
  CHECK(priced(eight_pages("budget $0.139 a copy", page("page 1") + page("page 8")))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $0.14, which is $0.001 over [over-budget]
  budget $0.139 a copy
         ~~~~~~~~~~~~~
  why   dearest: 10 black sides $1.00, paper $0.40
  type  budget     $0.14 a copy      (nothing here brings it under)
)");
}

TEST_CASE(
    "made all the same, the problem is a warning and the report says by how much it is over") {
  const Priced over = priced(eight_pages("budget $0.80 a copy", three_colours()));
  CHECK(over.over_budget_text(true).find("warning: a copy costs $1.14") != std::string::npos);
  const std::string stamped = estimate_as_text(over.edition(), over.estimate, over.sources(), true);
  CHECK(stamped.substr(0, stamped.find("\n\n  colour")) ==
        "Test\n10 copies. Money in USD.\n\nOVER BUDGET by $0.34 a copy, made all the same");
}

TEST_CASE("a page on a colour cover says black, since less would leave the cover's colour") {
  CHECK(priced(eight_pages("budget $0.70 a copy\ncover on plain in colour",
                           page("page 1 in colour") + page("page 2") + page("page 3")))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.02, which is $0.32 over [over-budget]
  budget $0.70 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, paper $0.20; tried: page 1 in black, $0.62: in
  type  page 1 in black      ($0.62 a copy)
        cover on plain      (or this: $0.62 a copy)
)");
}

TEST_CASE("pages that one line lists lose their colour together") {
  CHECK(
      priced(eight_pages("budget $0.80 a copy", page("page 1, 3 in colour"))).over_budget_text() ==
      R"(almanac.bodkin:6:10: error: a copy costs $1.02, which is $0.22 over [over-budget]
  budget $0.80 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, paper $0.20; tried: pages 1 and 3 in black, $0.22: in
  type  page 1, 3      ($0.22 a copy)
)");
}

TEST_CASE("the same pages in another order are offered first, since nothing is lost by it") {
  const std::string pages = page("page 3 in colour") + page("page 4 in colour") + page("page 5") +
                            page("page 6") + page("page 8");
  CHECK(priced(eight_pages("budget $0.80 a copy", pages)).over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.14, which is $0.34 over [over-budget]
  budget $0.80 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, 10 black sides $1.00, paper $0.40; tried: the same pages in
        another order, $0.74: in
  type  `bodkin arrange` lays the same pages for $0.74 a copy
        page 3      (or this: $0.74 a copy)
        page 4      (or this: $0.74 a copy)
)");
}

TEST_CASE(
    "another of the edition's own machines is tried where nothing that passes here fails there") {
  const std::string other = "machine far-copier\n  prints black at $0.06 a side\n"
                            "  prints colour at $0.30 a side\n  bare 1/8in\n"
                            "  duplex by machine\n";
  CHECK(priced(eight_pages("budget $0.80 a copy", three_colours(), other)).over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $1.14, which is $0.34 over [over-budget]
  budget $0.80 a copy
         ~~~~~~~~~~~~
  why   dearest: 20 colour sides $10.00, 10 black sides $1.00, paper $0.40; tried: pages 3 and 6 in
        black, $0.74: in
  type  page 3
        page 6      ($0.74 a copy with these 2 lines)
        page 1      (or this: $0.74 a copy)
        machine far-copier      (or this: $0.70 a copy)
)");
}

// A side of the large sheet costs what one of the small does, so two copies share it.
constexpr std::string_view large =
    "stock large\n  weight 20 lb bond\n  sheet tabloid, grain short\n"
    "  costs $0.03 a sheet\n";

// Ten sides and twenty sheets at $0.02 are $1.40; five sides and ten sheets at $0.03 are $0.80.
TEST_CASE("two up on a larger sheet that the machine takes is laid, priced and offered") {
  CHECK(priced(eight_pages("budget $0.10 a copy", page("page 1") + page("page 8"), large))
            .over_budget_text() ==
        R"(almanac.bodkin:6:10: error: a copy costs $0.14, which is $0.04 over [over-budget]
  budget $0.10 a copy
         ~~~~~~~~~~~~
  why   dearest: 10 black sides $1.00, paper $0.40; tried: the book 2 up on each tabloid sheet of
        large, $0.08: in
  type  up         2
        paper large
        ($0.08 a copy with these 2 lines, `up` new under `edition`; cut apart after printing)
)");
}

TEST_CASE("a larger sheet that the machine does not take, or prints at no price, is not offered") {
  const auto with = [](std::string_view line, std::string_view instead) {
    std::string manuscript =
        eight_pages("budget $0.10 a copy", page("page 1") + page("page 8"), large);
    manuscript.replace(manuscript.find(line), line.size(), instead);
    return priced(manuscript).over_budget_text();
  };
  CHECK(with("  bare 1/4in\n", "  bare 1/4in\n  sizes letter, legal\n").find("tabloid") ==
        std::string::npos);
  CHECK(with("black at $0.10 a side\n", "black at $0.10 a side on letter\n").find("tabloid") ==
        std::string::npos);
  CHECK(with("  costs $0.03 a sheet\n", "").find("tabloid") == std::string::npos);
  CHECK(with("20 lb bond\n  sheet tabloid", "28 lb bond\n  sheet tabloid").find("tabloid") ==
        std::string::npos);
}

// Pages of 4 1/4in x 5 1/2in, of which a tabloid sheet holds four sheets once folded: sixteen sides
// and papers, of twenty copies' two sheets, where there were twenty of each at two up.
TEST_CASE("more on the sheet that is bought already is offered with what has to be heeded") {
  std::string manuscript =
      eight_pages("up 2\nbudget $0.05 a copy", page("page 1") + page("page 4") + page("page 8"));
  for (const auto &[was, is] :
       {std::pair<std::string_view, std::string_view>{"half-letter", "quarter-letter"},
        {"sheet letter", "sheet tabloid"}})
    manuscript.replace(manuscript.find(was), was.size(), is);
  const std::string text = priced(manuscript).over_budget_text();
  CAPTURE(text);
  CHECK(text.find("the book 4 up on each sheet") != std::string::npos);
  CHECK(text.find("type  up 4      ($0.07 a copy") == std::string::npos);
}

// Four half-letter cards on a tabloid sheet: three sheets at $0.03 instead of ten at $0.02.
TEST_CASE("an insert may go several up on the sheets of another paper") {
  const std::string card =
      "insert card\n  size half-letter\n  page 1\n    words \"x\" in label\n  page 2\n    blank\n";
  const std::string text =
      priced(eight_pages("budget $0.18 a copy", page("page 1") + page("page 8") + card, large))
          .over_budget_text();
  CAPTURE(text);
  CHECK(text.find(
            "  type  up         4\n        paper      large\n"
            "        ($0.18 a copy with these 2 lines, `up` and `paper` new under `insert card`, "
            "if nothing on it\n        comes nearer than 1/4in to its edges; cut apart after "
            "printing)\n") != std::string::npos);
}

} // namespace bodkin::tests
