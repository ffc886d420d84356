// Editions whose runs are printed differently: the cheapest order against what the estimate says of
// every order there is.
#include "money/arrange.hpp"
#include "money/books_in_runs.hpp"
#include "money/manuscript.hpp"
#include "problems/render.hpp"
#include "sheet/parts.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <map>
#include <numeric>
#include <optional>

namespace bodkin::tests {
namespace {

bool prints_on(const Edition &edition, const Page &page) {
  return std::ranges::any_of(
      page.elements, [&](ElementId id) { return !std::holds_alternative<Hand>(edition[id].what); });
}

// By page, numbered on through the books of all runs.
std::vector<bool> draws_in_all(const Edition &edition) {
  std::vector<bool> draws{false};
  const auto take = [&](const Edition &book) {
    for (std::size_t page = 1; page < book.pages.size(); ++page)
      draws.push_back(prints_on(book, book.pages[page]));
  };
  take(edition);
  for (const auto &piece : edition.pieces)
    take(piece->edition);
  return draws;
}

struct InOrder {
  Read read;
  std::vector<bool> draws;
  Laid laid;
  bool printable = true;
  Exact run_total;

  explicit InOrder(const std::string &manuscript) : read(tests::read(manuscript)) {
    CAPTURE(as_text(read.problems, *read.sources, false));
    REQUIRE_FALSE(any_errors(read.problems));
    draws = draws_in_all(read.edition());
    Problems problems;
    impose_parts(read.edition(), *read.sources, problems);
    printable = std::ranges::none_of(
        problems, [](const Problem &problem) { return problem.check == "mixed-stock"; });
    laid = lay(read.edition(), draws, *read.sources);
    run_total = estimate(read.edition(), laid.imposition, laid.sides).run_total;
  }
};

struct LeastOf {
  bool any = false;
  Exact cost;
  int moves = 0;
};

// What the estimate says, once for each order in which another page differs.
class Estimates {
public:
  explicit Estimates(const BookInRuns &book) : book_(book) {}
  std::optional<Exact> operator()(const std::vector<int> &order) {
    const auto [entry, fresh] = known_.try_emplace(book_.manuscript(order));
    if (fresh)
      if (const InOrder tried(entry->first); tried.printable)
        entry->second = tried.run_total;
    return entry->second;
  }

private:
  const BookInRuns &book_;
  std::map<std::string, std::optional<Exact>> known_;
};

LeastOf least_of(const BookInRuns &book) {
  Estimates estimate_of(book);
  std::vector<int> order(static_cast<std::size_t>(book.count) + 1), free;
  std::iota(order.begin(), order.end(), 0);
  for (int page = 1; page <= book.count; ++page)
    if (!book.stays[static_cast<std::size_t>(page)])
      free.push_back(page);
  std::vector<int> laid = free;
  LeastOf least;
  do {
    for (std::size_t i = 0; i < free.size(); ++i)
      order[static_cast<std::size_t>(free[i])] = laid[i];
    const std::optional<Exact> cost = estimate_of(order);
    const int moves = arranging::moves_in(order);
    if (cost && (!least.any || std::pair(*cost, moves) < std::pair(least.cost, least.moves)))
      least = {true, *cost, moves};
  } while (std::ranges::next_permutation(laid).found);
  return least;
}

} // namespace

namespace {

// Eight pages gathered in leaves, each on a sheet by itself; pages 3 to 6 may move.
std::string leaves(std::string_view facts, std::string_view machine, std::string_view pages) {
  return fmt::format("edition \"Test\"\n  pages 8\n  folding side-stapled\n  paper white\n"
                     "  machine copier\n{}\n"
                     "stock white\n  weight 20 lb bond\n  sheet letter, grain short\n"
                     "  costs $0.02 a sheet\nstock rose like white\n\n"
                     "machine copier\n  prints black at $0.10 a side\n  bare 1/4in\n"
                     "  duplex by machine\n{}\n"
                     "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n\n"
                     "page 1-2, 7-8\n  words \"x\" in label\n{}",
                     facts, machine, pages);
}

struct Found {
  InOrder of;
  Arrangement made;
  explicit Found(const std::string &manuscript)
      : of(manuscript), made(arrange(of.read.edition(), of.laid, of.draws, *of.read.sources)) {}
  std::vector<int> order() const {
    return {made.cheapest->order.begin() + 1, made.cheapest->order.end()};
  }
};

using PageNumbers = std::vector<int>;

} // namespace

TEST_CASE("two copies on each sheet: leaves that differ are made for each run on whole sheets") {
  // Pages 3 and 5 differ. On two leaves: 3 1/2 and 2 1/2 sheets of each, paid as 4 and 3, and 6 of
  // each other; on one leaf a sheet and its two sides less.
  const Found it(leaves("  size quarter-letter\n  up 2\n  run 7 copies called plain\n"
                        "  run 5 copies called de-luxe\n",
                        "",
                        "page 3, 5\n  words \"x\" in label\n    at 1in 1in, 1in x 1in\n"
                        "  words \"y\" in label\n    at 1in 2in, 1in x 1in\n    only de-luxe\n"
                        "page 4, 6\n  words \"x\" in label\n"));
  CHECK(it.order() == PageNumbers{1, 2, 3, 5, 4, 6, 7, 8});
  CHECK(it.made.cheapest->proved);
  CHECK(it.made.saved() == Exact::ratio(22, 100));
}

TEST_CASE(
    "a sheet that bears its copy's number is a pass of its own, best paid for where its paper "
    "is one already") {
  const Found it(leaves("  size half-letter\n  run 10 copies\n", "  setup $2 a pass\n",
                        "page 3\n  words \"x\" in label\npage 4 on rose\n  words \"x\" in label\n"
                        "page 5\n  words in label\n    says \"[1](fact:copy)\"\n"
                        "page 6\n  words \"x\" in label\n"));
  // Pages 4 and 6 change places, or 3 and 5.
  CHECK(it.made.cheapest->moves == 2);
  CHECK(it.made.saved() == Exact(2));
}

TEST_CASE("editions of several runs are laid as cheaply, with as few moves, as the best of all "
          "their orders") {
  int printable = 0, differing = 0, better = 0;
  for (std::uint32_t seed = 1; seed <= 150; ++seed) {
    CAPTURE(seed);
    const BookInRuns book = book_in_runs(seed);
    std::vector<int> written(static_cast<std::size_t>(book.count) + 1);
    std::iota(written.begin(), written.end(), 0);
    const std::string manuscript = book.manuscript(written);
    CAPTURE(manuscript);
    const LeastOf least = least_of(book);
    const InOrder of(manuscript);
    const Arrangement made = arrange(of.read.edition(), of.laid, of.draws, *of.read.sources);
    REQUIRE(made.cheapest.has_value() == least.any);
    if (!least.any)
      continue;
    CHECK(made.cheapest->proved);
    CHECK(made.total == least.cost);
    CHECK(InOrder(book.manuscript(made.cheapest->order)).run_total == least.cost);
    CHECK(made.cheapest->moves == least.moves);
    ++printable;
    differing += has_other_books(of.read.edition()) ? 1 : 0;
    better += least.moves > 0 ? 1 : 0;
  }
  // Enough of each kind that the agreement says something.
  CHECK(printable > 120);
  CHECK(differing > 120);
  CHECK(better > 40);
}

} // namespace bodkin::tests
