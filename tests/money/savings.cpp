// Changes that are offered over budget: whoever types the lines pays what was said.
#include "edition/piece.hpp"
#include "money/bill.hpp"
#include "money/budget_ways.hpp"
#include "money/manuscript.hpp"
#include "money/saving.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <random>

namespace bodkin::tests {
namespace {

struct Dice {
  std::mt19937 generator;
  int below(int sides) { return static_cast<int>(generator() % static_cast<std::uint32_t>(sides)); }
  bool one_in(int sides) { return below(sides) == 0; }
  std::string_view any(std::initializer_list<std::string_view> of) {
    return of.begin()[below(static_cast<int>(of.size()))];
  }
};

std::string supplies(Dice &dice) {
  return fmt::format("stock card like plain\n  costs $0.{:02} a sheet\n"
                     "stock rose like plain\n  tint #f3b3c0\n  costs $0.{:02} a sheet\n"
                     "machine far-copier\n  prints black at $0.{:02} a side\n"
                     "  prints colour at $0.{:02} a side\n  bare 1/8in\n  duplex by machine\n"
                     "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n",
                     1 + dice.below(30), 1 + dice.below(30), 4 + dice.below(9),
                     20 + dice.below(50));
}

std::string large_sheets(Dice &dice) {
  return fmt::format("stock large like plain\n  sheet tabloid, grain short\n"
                     "  costs $0.{:02} a sheet\n",
                     2 + dice.below(10));
}

std::string words(std::string_view indent = "  ") {
  return fmt::format("{0}words \"x\" in label\n{0}  at 1in 1in, 1in x 1in\n", indent);
}

constexpr std::string_view numbered = "  words in label\n    at 1in 5in, 1in x 1in\n"
                                      "    says \"[1](fact:copy)\"\n";

std::string book_pages(Dice &dice) {
  std::string pages;
  for (int page = 1; page <= 8; ++page) {
    if (dice.one_in(6))
      continue;
    const bool list = page % 2 == 1 && page < 7 && dice.one_in(4);
    pages += list ? fmt::format("page {}-{}", page, page + 1) : fmt::format("page {}", page);
    if (page == 1)
      pages += " called front";
    pages += dice.any({"", " in colour", " in black"});
    pages += page > 2 && page < 7 && dice.one_in(4) ? " on plain" : "";
    pages += dice.one_in(6) ? " by copier\n" : "\n";
    pages += dice.one_in(5) ? numbered : "";
    pages += words() + (dice.one_in(3) ? "  hand stamp \"moon\"\n    at 1in 3in, 1in x 1in\n"
                                         "    costs $0.03 a copy\n"
                                       : "");
    page += list ? 1 : 0;
  }
  return pages;
}

std::string pieces(Dice &dice) {
  std::string text;
  if (dice.one_in(2))
    text += fmt::format("wrap on card{}\n  page front-cover{}\n{}",
                        dice.any({"", " in colour", " in black"}), dice.any({"", " in colour"}),
                        words("    "));
  if (dice.one_in(2))
    text +=
        fmt::format("insert card{}\n  size quarter-letter\n{}{}  page 1{}\n{}",
                    dice.any({"", " \"A card\""}), dice.any({"", "  up 2\n"}),
                    dice.any({"", "  paper rose\n"}), dice.any({"", " in colour"}), words("    "));
  return text;
}

// Where nothing goes several up there are few changes, and all sets of them can be tried.
std::string random_edition(Dice &dice, bool one_up = false) {
  std::string manuscript = small_edition(
      fmt::format("pages 8\n{}{}", dice.any({"", "cover on rose\n", "cover on plain in colour\n"}),
                  dice.any({"", "printing colour\n"})),
      supplies(dice) + (one_up ? "" : large_sheets(dice)) + book_pages(dice) +
          (one_up ? "" : pieces(dice)));
  constexpr std::string_view run = "run 10 copies";
  manuscript.replace(manuscript.find(run), run.size(),
                     dice.one_in(3)
                         ? "run 8 copies called plain\n  run 3 copies, 2 spare called deep"
                         : "run 11 copies, 2 spare");
  constexpr std::string_view bare = "  bare 1/4in\n";
  if (dice.one_in(2))
    manuscript.insert(manuscript.find(bare), "  setup $1.30 a pass\n");
  return manuscript;
}

// The manuscript with lines changed where they stand.
std::string typed(const std::string &manuscript, const ChangedLines &changed) {
  std::vector<Edit> edits = changed.edits();
  std::ranges::reverse(edits);
  std::string text = manuscript;
  for (const Edit &edit : edits)
    text.replace(bytes(edit.range.begin), bytes(edit.range.end) - bytes(edit.range.begin),
                 edit.text);
  return text;
}

Exact run_of(const Edition &edition, const Priced &it, const std::vector<Saving> &made) {
  const Edition changed = applied(edition, made, it.sources());
  const Laid laid = lay(changed, it.draws, it.sources());
  return estimate(changed, laid.imposition, laid.sides).run_total;
}

} // namespace

TEST_CASE("what a change would cost is what the edition costs once its lines are typed") {
  Dice dice{std::mt19937(11)};
  int typed_lines = 0;
  for (int round = 0; round < 60; ++round) {
    const std::string manuscript = random_edition(dice);
    CAPTURE(manuscript);
    Priced it = priced(manuscript);
    for (std::size_t i = 0; i < it.draws.size(); ++i)
      it.coloured.push_back(dice.one_in(2));
    for (const Saving &saving :
         savings(it.edition(), it.laid, {it.draws, it.coloured}, it.sources())) {
      CAPTURE(saving.what);
      const ChangedLines lines = lines_to_type(it.edition(), {saving}, it.sources());
      CAPTURE(lines.text());
      // New lines stand under headings, and among the layings is the one that is laid already.
      if (!lines.news().empty() || lines.count() == 0)
        continue;
      const Priced after = priced(typed(manuscript, lines));
      CHECK(after.estimate.run_total == run_of(it.edition(), it, {saving}));
      ++typed_lines;
    }
  }
  CHECK(typed_lines > 300);
}

TEST_CASE("a saving that loses nothing takes no page's colour that has any") {
  Dice dice{std::mt19937(12)};
  int free = 0;
  for (int round = 0; round < 60; ++round) {
    const std::string manuscript = random_edition(dice);
    CAPTURE(manuscript);
    Priced it = priced(manuscript);
    for (std::size_t i = 0; i < it.draws.size(); ++i)
      it.coloured.push_back(dice.one_in(3));
    for (const Saving &saving :
         savings(it.edition(), it.laid, {it.draws, it.coloured}, it.sources())) {
      if (saving.loss != Loss::nothing)
        continue;
      ++free;
      CAPTURE(saving.what);
      const Edition after = applied(it.edition(), {saving}, it.sources());
      for (std::size_t page = 1; page < after.pages.size(); ++page)
        if (it.draws[page] && it.coloured[page])
          CHECK(*after.pages[page].mode == *it.edition().pages[page].mode);
    }
  }
  CHECK(free > 20);
}

namespace {

// Sets of changes that meet the budget, and of which none can be done without.
std::size_t ways_there_are(const Priced &it, const std::vector<Saving> &all, const Exact &limit) {
  const Exact copies(it.estimate.copies);
  std::vector<std::size_t> meets;
  for (std::size_t set = 1; set < (std::size_t{1} << all.size()); ++set) {
    const bool holds_one =
        std::ranges::any_of(meets, [&](std::size_t smaller) { return (set & smaller) == smaller; });
    std::vector<Saving> made;
    bool together = !holds_one;
    for (std::size_t i = 0; i < all.size() && together; ++i)
      if ((set >> i & 1U) != 0) {
        together = goes_with(all[i], made);
        made.push_back(all[i]);
      }
    if (together && run_of(it.edition(), it, made) / copies <= limit)
      meets.push_back(set);
  }
  return meets.size();
}

} // namespace

TEST_CASE(
    "each way under the budget is one once it is typed, and three are found where there are") {
  Dice dice{std::mt19937(13)};
  int typed_ways = 0, counted = 0;
  for (int round = 0; round < 120; ++round) {
    std::string manuscript = random_edition(dice, round % 2 == 0);
    const Exact now = priced(manuscript).estimate.per_copy;
    const Exact limit =
        Exact::ratio((now * Exact(1000 - 50 * (1 + dice.below(10)))).ceiling(), 1000);
    const std::string budget = fmt::format("  budget ${} a copy\n", limit.rounded(3));
    manuscript.insert(manuscript.find("  paper plain\n"), budget);
    CAPTURE(manuscript);
    Priced it = priced(manuscript);
    if (!it.estimate.budget->over)
      continue;
    for (std::size_t i = 0; i < it.draws.size(); ++i)
      it.coloured.push_back(dice.one_in(2));
    const PagesDrawn drawn{it.draws, it.coloured};
    const BudgetWays found =
        ways_under_budget(it.edition(), it.laid, it.estimate, drawn, it.sources());
    for (const Tried &way : found.ways) {
      CHECK(way.cost <= it.estimate.budget->limit);
      const ChangedLines lines = lines_to_type(it.edition(), way.made, it.sources());
      CAPTURE(lines.text());
      if (way.anew || !lines.news().empty())
        continue;
      const Priced after = priced(typed(manuscript, lines));
      CHECK(after.estimate.per_copy == way.cost);
      ++typed_ways;
    }
    const std::vector<Saving> all = savings(it.edition(), it.laid, drawn, it.sources());
    const bool few = all.size() <= 9 && std::ranges::none_of(all, [](const Saving &saving) {
                       return std::holds_alternative<Laying>(saving.change);
                     });
    if (!few)
      continue;
    // Where those that cost nothing are not enough, each way holds them: two may become one.
    const bool nothing_free = std::ranges::none_of(
        all, [](const Saving &saving) { return saving.loss == Loss::nothing; });
    const std::size_t there_are = ways_there_are(it, all, it.estimate.budget->limit);
    CHECK(found.ways.size() >= std::min<std::size_t>(there_are, nothing_free ? 3 : 1));
    ++counted;
  }
  CHECK(typed_ways > 60);
  CHECK(counted > 20);
}

} // namespace bodkin::tests
