// What a machine asks beside its sides, and how long it prints.
#include "money/manuscript.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// The small zine with more facts of its copier.
std::string copier(std::string_view more, int copies = 50) {
  std::string text = small_zine("", "");
  const std::string_view prints = "  prints     black at $0.10 a side\n";
  text.insert(text.find(prints) + prints.size(), more);
  text.replace(text.find("50 copies"), 9, fmt::format("{} copies", copies));
  return text;
}

} // namespace

TEST_CASE("setup is paid for every pass, or once") {
  CHECK(lines(priced(copier("  setup $1.50 a pass\n")).estimate) ==
        "200 × 0.10 = 20.00 black sides at copier (printing)\n"
        "1 × 1.50 = 1.50 setup at copier (printing)\n");
  CHECK(lines(priced(copier("  setup $1.50 a pass\n  duplex by hand\n")).estimate) ==
        "200 × 0.10 = 20.00 black sides at copier (printing)\n"
        "2 × 1.50 = 3.00 setup at copier (printing)\n");
  CHECK(lines(priced(copier("  setup $1.50 once\n  duplex by hand\n")).estimate) ==
        "200 × 0.10 = 20.00 black sides at copier (printing)\n"
        "1 × 1.50 = 1.50 setup at copier (printing)\n");
}

TEST_CASE("what a run lacks to the least that a machine is paid is paid too, and taxed") {
  CHECK(lines(priced(copier("  least $5 a run\n  setup $0.50 once\n  tax 10%\n", 4)).estimate) ==
        "16 × 0.10 = 1.60 black sides at copier (printing)\n"
        "1 × 0.50 = 0.50 setup at copier (printing)\n"
        "1 × 2.90 = 2.90 least at copier (printing)\n"
        "5 × 0.10 = 0.50 tax at copier (tax)\n");
  CHECK(lines(priced(copier("  least $5 a run\n", 13)).estimate) ==
        "52 × 0.10 = 5.20 black sides at copier (printing)\n");
}

TEST_CASE("below the least a further copy costs nothing") {
  CHECK(priced(copier("  least $5 a run\n", 4)).estimate.one_more_copy == Exact(0));
  CHECK(priced(copier("  least $5 a run\n", 13)).estimate.one_more_copy == Exact::ratio(4, 10));
}

TEST_CASE("a machine of a known speed tells how long it prints") {
  const Estimate estimate = priced(copier("  speed 30 sides a minute\n")).estimate;
  REQUIRE(estimate.machines.size() == 1);
  CHECK(estimate.machines[0].machine == "copier");
  CHECK(estimate.machines[0].sides == Exact(200));
  CHECK(estimate.machines[0].minutes == Exact::ratio(20, 3));
}

TEST_CASE("a setup by the copy and a least by the side are no such prices") {
  CHECK(tests::read(copier("  setup $1 a copy\n  least $1 a side\n")).found() ==
        "error almanac.bodkin:16:9 priced-by-what\n"
        "error almanac.bodkin:15:9 priced-by-what\n"
        "note almanac.bodkin:11:7 unused-paper\n");
}

} // namespace bodkin::tests
