// The cheapest order against every order there is, and against a mixed-integer solver.
#include "asked.hpp"
#include "money/arrange.hpp"
#include "money/integer_program.hpp"
#include "money/manuscript.hpp"
#include "money/random_books.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <doctest/doctest.h>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <numeric>
#include <unistd.h>

namespace bodkin::tests {
namespace {

struct Best {
  std::int64_t cents = -1;
  int moves = 0;
};

// By trying each order of the pages that do not stay.
Best best_of_all(const RandomBook &book, const Lying &lying) {
  std::vector<int> order(static_cast<std::size_t>(book.count) + 1);
  std::iota(order.begin(), order.end(), 0);
  std::vector<int> free;
  for (int page = 1; page <= book.count; ++page)
    if (!book.stays(page))
      free.push_back(page);
  std::vector<int> laid = free;
  Best best;
  do {
    for (std::size_t i = 0; i < free.size(); ++i)
      order[static_cast<std::size_t>(free[i])] = laid[i];
    const std::int64_t cost = cents(book, lying, order);
    const int moves = arranging::moves_in(order);
    if (cost >= 0 && (best.cents < 0 || std::pair(cost, moves) < std::pair(best.cents, best.moves)))
      best = {cost, moves};
  } while (std::ranges::next_permutation(laid).found);
  return best;
}

std::vector<bool> draws_of(const RandomBook &book) {
  std::vector<bool> draws(1);
  for (int page = 1; page <= book.count; ++page)
    draws.push_back(book.pages[static_cast<std::size_t>(page)].draws);
  return draws;
}

// What GLPK's glpsol says that the run costs at the least, in cents.
std::int64_t solved(const std::string &program) {
  namespace fs = std::filesystem;
  const fs::path folder = fs::temp_directory_path() / fmt::format("bodkin-order-{}", getpid());
  fs::create_directories(folder);
  std::ofstream(folder / "order.lp") << program;
  const std::string said =
      asked(fmt::format("cd '{}' && glpsol --lp order.lp --cuts --tmlim 60 -o order.txt >told && "
                        "grep -q 'INTEGER OPTIMAL' order.txt && sed -n "
                        "'s/^Objective: .* = \\(-\\{{0,1\\}}[0-9]*\\) .*/\\1/p' order.txt",
                        folder.string()));
  fs::remove_all(folder);
  return std::stoll(said);
}

} // namespace

TEST_CASE("a mixed-integer solver finds the same least cost of larger editions") {
  // GLPK, glpsol 5.0 of Debian 12.
  constexpr std::array sizes{std::pair(16, 8), std::pair(24, 10), std::pair(32, 12),
                             std::pair(64, 20)};
  for (std::uint32_t seed = 1; seed <= 24; ++seed) {
    CAPTURE(seed);
    const auto &[count, movable] = sizes[seed % sizes.size()];
    RandomBook book = random_book(seed, count, movable);
    book.blank_charged = false;
    book.setup = book.least = 0;
    const Priced written = priced(book.manuscript());
    const Laid laid = lay(written.edition(), draws_of(book), written.sources());
    const Arrangement made = arrange(written.edition(), laid, draws_of(book), written.sources());
    const Lying lies = lying(laid.imposition);
    REQUIRE(made.cheapest.has_value());
    REQUIRE(made.cheapest->proved);
    CHECK(cents(book, lies, made.cheapest->order) ==
          solved(integer_program(book, lies)) +
              std::int64_t{book.copies} * lies.sheets * book.plain);
  }
}

TEST_CASE("where only the most promising walks are followed, nothing is called proved that is not, "
          "and no order costs less than the bound") {
  arranging::Effort little;
  little.nodes = 1'000;
  little.wide_nodes = 300;
  int wide = 0, wide_proved = 0;
  for (std::uint32_t seed = 1; seed <= 80; ++seed) {
    CAPTURE(seed);
    const RandomBook book = random_book(seed, 24, 12);
    const Priced written = priced(book.manuscript());
    const Laid laid = lay(written.edition(), draws_of(book), written.sources());
    const auto arranged = [&](const arranging::Effort &effort) {
      return *arrange(written.edition(), laid, draws_of(book), written.sources(), effort).cheapest;
    };
    const arranging::Arranged least = arranged({}), found = arranged(little);
    REQUIRE(least.proved);
    CHECK(found.bound <= least.cost + arranging::no_money);
    CHECK(found.cost >= least.cost - arranging::no_money);
    CHECK((!found.proved || found.cost <= least.cost + arranging::no_money));
    wide += found.fewest_moves ? 0 : 1;
    wide_proved += !found.fewest_moves && found.proved ? 1 : 0;
  }
  CHECK(wide > 50);
  CHECK(wide_proved > 25);
}

TEST_CASE("a thousand random editions are laid as cheaply, with as few moves, as the best of all "
          "their orders") {
  int printable = 0, steps = 0, better = 0;
  for (std::uint32_t seed = 1; seed <= 1000; ++seed) {
    CAPTURE(seed);
    const RandomBook book = random_book(seed);
    const std::string manuscript = book.manuscript();
    CAPTURE(manuscript);
    const Priced written = priced(manuscript);
    const Laid laid = lay(written.edition(), draws_of(book), written.sources());
    const Lying lies = lying(laid.imposition);
    const Best best = best_of_all(book, lies);
    const Arrangement made = arrange(written.edition(), laid, draws_of(book), written.sources());
    REQUIRE(made.cheapest.has_value() == (best.cents >= 0));
    if (best.cents < 0)
      continue;
    REQUIRE(made.cheapest->proved);
    REQUIRE(made.total == Exact::ratio(best.cents, 100));
    REQUIRE(cents(book, lies, made.cheapest->order) == best.cents);
    REQUIRE(made.cheapest->moves == best.moves);
    REQUIRE(arranging::moves_in(made.cheapest->order) == best.moves);
    ++printable;
    steps += book.black_step + book.colour_step > 0 ? 1 : 0;
    better += best.moves > 0 ? 1 : 0;
  }
  // Enough of each kind that the agreement says something.
  CHECK(printable > 600);
  CHECK(steps > 400);
  CHECK(better > 200);
}

} // namespace bodkin::tests
