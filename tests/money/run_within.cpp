#include "money/run_within.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

// $3.00 once and $1.00 a copy; two are cut out of a sheet of $0.30.
Way two_up() {
  return {
      "own", [](std::int64_t) {
        Stretch stretch{Exact(3), Exact(1) + Exact::ratio(15, 100), longest_compared * 10, true};
        stretch.rounded.push_back({Exact::ratio(1, 2), Exact(), Exact::ratio(30, 100)});
        return stretch;
      }};
}

BudgetHeld budget(const Exact &limit, bool of_run) { return {limit, of_run, true, {}, {}}; }

} // namespace

TEST_CASE("a longer run within the budget of a copy pays for the whole of its last sheet") {
  // 3 + 1.15 n = 1.43 n at 10.7. Eleven cost $15.80 with half a sheet unused, of $15.73; twelve
  // cost $16.80, of $17.16.
  CHECK(run_within(two_up(), 4, budget(Exact::ratio(143, 100), false)) == 12);
}

TEST_CASE("a shorter run within the budget of all pays for the whole of its last sheet") {
  // 3 + 1.15 n = 18 at 13.04. Thirteen cost $18.10 with half a sheet unused, twelve $16.80.
  CHECK(run_within(two_up(), 40, budget(Exact(18), true)) == 12);
}

TEST_CASE("where no run is cheap enough none is found") {
  CHECK(run_within(two_up(), 4, budget(Exact::ratio(115, 100), false)) == std::nullopt);
  CHECK(run_within(two_up(), 40, budget(Exact(4), true)) == std::nullopt);
}

} // namespace bodkin::tests
